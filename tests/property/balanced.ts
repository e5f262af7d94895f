import assert from 'node:assert/strict';
import type { Analysis, Reaction } from '@cribwright/engine';
import { type Interval, type Plan, toPlan, type Vehicle } from '@cribwright/model';
import { casesOf } from './faults.js';

/** Weights with their places, plan axes, so that they add up. */
interface Heavy {
  readonly weight: number;
  readonly momentX: number;
  readonly momentY: number;
}

/** One rigid body, or several taken as one, and what they must add up to. */
interface Whole {
  readonly kind: string;
  readonly ids: readonly string[];
  readonly heavy: Heavy;
}

const downhill = { front: [-1, 0], rear: [1, 0], 'driver side': [0, -1], 'passenger side': [0, 1] } as const;

/** A weight at a height comes down toward the low end of a vehicle that pitches, and downhill: by its moments. */
const at = (
  { ground }: Plan,
  vehicle: Vehicle,
  weight: number,
  [x, y, z]: readonly [number, number, number],
): Heavy => {
  const { position } = vehicle;
  const forward = position.kind === 'pitched' ? z * Math.tan(position.angle) : 0;
  const place = toPlan(vehicle, { x: x - forward, y });
  const [down, across] = downhill[ground.toward];
  const fall = z * Math.abs(ground.grade);
  return {
    weight,
    momentX: weight * (place.x + down * fall),
    momentY: weight * (place.y + across * fall),
  };
};

const less = (a: Heavy, b: Heavy): Heavy => ({
  weight: a.weight - b.weight,
  momentX: a.momentX - b.momentX,
  momentY: a.momentY - b.momentY,
});

const one = (i: Interval | undefined): number | undefined => i?.high;

/** A vehicle; and where its cab has springs of its own, the cab, the rest, and the two together. */
function wholesOf(
  plan: Plan,
  vehicle: Vehicle,
  { weight, center }: Analysis['bodies'][number],
): readonly Whole[] {
  const [w, x, y, z] = [weight, center.x, center.y, center.z].map((f) => one(f.value));
  if (w === undefined || x === undefined || y === undefined || z === undefined || w <= 0) return [];
  const { kind } = vehicle.position;
  const all = at(plan, vehicle, w, [x, y, z]);
  // A cab that lies is no longer on its springs.
  if (vehicle.cab === undefined || kind === 'on its side' || kind === 'on its roof')
    return [{ kind, ids: [vehicle.id], heavy: all }];
  const { cab } = vehicle;
  const own = at(plan, vehicle, cab.weight.high, [cab.center.x.high, 0, cab.center.z.high]);
  const [rest, up] = [vehicle.id, `${vehicle.id}/cab`];
  return [
    { kind: 'a cab on its own springs', ids: [up], heavy: own },
    { kind, ids: [rest], heavy: less(all, own) },
    { kind, ids: [rest, up], heavy: all },
  ];
}

/** What bodies feel from below, less what they feel from above. What passes between them cancels out. */
function felt(reactions: readonly Reaction[], ids: readonly string[]): Heavy {
  let [weight, momentX, momentY] = [0, 0, 0];
  for (const r of reactions) {
    const times = (ids.includes(r.upper) ? 1 : 0) - (ids.includes(r.lower) ? 1 : 0);
    weight += times * r.load.high;
    momentX += times * r.load.high * r.at.x;
    momentY += times * r.load.high * r.at.y;
  }
  return { weight, momentX, momentY };
}

/**
 * Throws where forces or moments are left over by more than 1e-9 of the weight of everything (times 30 m).
 *
 * @returns what kind each body was that came to rest.
 */
export function balanced(plan: Plan, analysis: Analysis): readonly string[] {
  const total = analysis.bodies.reduce((sum, b) => sum + (one(b.weight.value) ?? 0), 0);
  const wholes = analysis.bodies.flatMap((body) => {
    const vehicle = plan.vehicles.find((v) => v.id === body.vehicle);
    return vehicle === undefined ? [] : wholesOf(plan, vehicle, body);
  });
  return analysis.stages.flatMap((stage) =>
    casesOf(stage)
      .filter((c) => c.rests)
      .flatMap((c) =>
        wholes.map(({ kind, ids, heavy }) => {
          const off = less(felt(c.reactions, ids), heavy);
          const worst = Math.max(
            Math.abs(off.weight) / total,
            Math.abs(off.momentX) / total / 30,
            Math.abs(off.momentY) / total / 30,
          );
          assert.ok(
            worst < 1e-9,
            `${ids.join(' and ')} ${kind}, ${stage.title}, ${c.title}: ${worst} left over`,
          );
          return kind;
        }),
      ),
  );
}

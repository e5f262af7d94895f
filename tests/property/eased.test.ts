import { heldPush, type PushContact, type RestingSystem, rest } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';
import { planOf, straightTruck } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { foot } from '@cribwright/units';
import { lb } from '@cribwright/units/internal';
import { describe, expect, it } from 'vitest';

/** Why `more-weight.ts` asks what it asks, and no more: what weight does ease. Each is physics, not a fault. */
const forces = (system: RestingSystem, preloads: Readonly<Record<string, number>> = {}) => {
  const found = rest(
    system,
    system.springs.map((s) => ({ preload: preloads[s.id] ?? 0, closing: 0 })),
  );
  return Object.fromEntries(
    system.springs.map((s, i) => [
      s.id,
      found.kind === 'rests' ? (found.forces[i] ?? Number.NaN) : Number.NaN,
    ]),
  );
};

/** Two springs across, at each of some places lengthwise. */
const pair = (id: string, upper: string, lower: string, x: number) =>
  [-1, 1].map((y) => ({ id: `${id} ${y}`, upper, lower, x, y, stiffness: 1e6 }));

describe('more weight eases', () => {
  it('the front axle, where it goes behind the last axle: a lever', () => {
    const front = `${straightTruck.id}/${straightTruck.axles[0]?.id}/driver`;
    const behind = Math.max(...straightTruck.axles.map((a) => a.x)) + 4 * foot;
    const exactly = (n: number) => ({ low: n, high: n });
    const carried = (weight: number) => {
      const cargo = {
        id: 'more',
        name: 'more',
        weight: exactly(weight),
        from: behind,
        to: behind,
        center: exactly(behind),
        offset: exactly(0),
        height: exactly(5 * foot),
        shifts: false,
        ref: { element: straightTruck.id },
      };
      const plan: Plan = planOf({ vehicles: [{ ...straightTruck, cargo: [cargo] }] });
      const [stage] = analyze(plan).stages;
      return stage?.asBuilt.reactions.find((r) => r.id === front)?.load.high ?? Number.NaN;
    };
    expect(carried(4000 * lb)).toBeLessThan(carried(1000 * lb) - 1);
  });

  it('the far axle of a car beneath, where what rests on its end gets heavier', () => {
    const system = (weight: number): RestingSystem => ({
      bodies: [
        { id: 'top', weight, x: 5, y: 0 },
        { id: 'car', weight: 15_000, x: 0, y: 0 },
      ],
      springs: [
        ...pair('car front', 'car', 'ground', -1.4),
        ...pair('car rear', 'car', 'ground', 1.4),
        ...pair('on the tail', 'top', 'car', 2),
        ...pair('own wheels', 'top', 'ground', 8),
      ],
    });
    const [light, heavy] = [forces(system(10_000)), forces(system(14_000))];
    expect(light['car front 1']).toBeGreaterThan(0);
    expect(heavy['car front 1']).toBeLessThan((light['car front 1'] ?? 0) - 100);
  });

  it('a wedge driven tight at one end, where the center of gravity lies at the other', () => {
    const system = (weight: number): RestingSystem => ({
      bodies: [{ id: 'body', weight, x: 1.87, y: 0 }],
      springs: [
        ...pair('wedge', 'body', 'ground', 0),
        ...pair('middle', 'body', 'ground', 1),
        ...pair('end', 'body', 'ground', 2.2),
      ],
    });
    const tight = { 'wedge -1': 1500, 'wedge 1': 1500 };
    const [light, heavy] = [forces(system(20_000), tight), forces(system(24_000), tight)];
    expect(heavy['wedge 1']).toBeLessThan((light['wedge 1'] ?? Number.NaN) - 20);
  });

  const footing = (body: string, lower: string, z: number, coupled = false): readonly PushContact[] =>
    [-1, 1].flatMap((x) =>
      [-1, 1].map((y) => ({
        id: `${body} ${x} ${y}`,
        upper: body,
        lower,
        at: { x, y, z },
        friction: coupled ? 0 : 0.5,
        coupled,
      })),
    );
  const still = { stacks: [], struts: [], ties: [], loads: [], gravity: { x: 0, y: 0, z: -1 } };
  const pushed = (
    weights: Readonly<Record<string, number>>,
    contacts: readonly PushContact[],
    body: string,
  ) => {
    const bodies = Object.entries(weights).map(([id, weight], i) => ({
      id,
      weight,
      center: { x: 0, y: 0, z: 0.2 + 0.2 * i },
    }));
    const push = { body, at: { x: 0, y: 0, z: 0.2 }, direction: { x: 0, y: 1, z: 0 } };
    const held = heldPush({ ...still, bodies, contacts }, push);
    return held.kind === 'holds' ? held.force : Number.NaN;
  };

  it('a push, counted as a force: friction grows with weight', () => {
    const force = (block: number) => pushed({ block }, footing('block', 'ground', 0), 'block');
    expect(force(1000)).toBeCloseTo(500, 6);
    expect(force(2000)).toBeCloseTo(1000, 6);
  });

  it('a push as a share of the main vehicle, where what it is coupled to gets heavier', () => {
    const contacts = [...footing('car', 'ground', 0), ...footing('top', 'car', 0.2, true)];
    const share = (car: number) => pushed({ car, top: 1000 }, contacts, 'top') / 1000;
    expect(share(1000)).toBeCloseTo(1, 6);
    expect(share(3000)).toBeCloseTo(2, 6);
  });
});

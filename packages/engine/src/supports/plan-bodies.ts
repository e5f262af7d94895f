import { type Message, message, type Name, name, term } from '@cribwright/messages';
import type { Cab, ElementId, Ground, Plan, Vehicle } from '@cribwright/model';
import { add, exactly, type Interval, type PlanPoint, scale, toPlan, toVehicle } from '@cribwright/model';
import type { BodyMass } from '../mass/body-mass.js';
import { gravityOn } from '../mass/gravity.js';
import { cabBody } from './support-points.js';

/** A vehicle, or a cab on springs of its own, as one rigid body. */
export interface PlanBody {
  readonly id: ElementId;
  readonly vehicle: ElementId;
  /** `trailer`, `truck cab`. */
  readonly name: Message | Name;
  /** Every corner of its ranges of weight and place, plan axes. */
  readonly corners: readonly BodyCorner[];
  /** Center of gravity above the ground. */
  readonly centerHeight: Interval | undefined;
}

export interface BodyCorner {
  readonly weight: number;
  /** Where the weight comes down through the ground as it slopes: on a grade, downhill of the center of gravity. */
  readonly x: number;
  readonly y: number;
  /** The center of gravity itself, where the ground slopes. */
  readonly center?: { readonly x: number; readonly y: number };
  /** `heaviest`, `center farthest to its front`. Empty where nothing is a range. */
  readonly words: readonly Message[];
  /** With the upward and downward part of the plan's working loads in the weight. */
  readonly working?: true;
}

/**
 * The bodies of a plan. The weight of a vehicle includes its cab; a cab on springs of its own is taken out of it.
 *
 * @returns also the vehicles whose weight or center is not known: nothing can be said about them.
 */
export function planBodies(
  plan: Plan,
  masses: ReadonlyMap<ElementId, BodyMass>,
): { readonly bodies: readonly PlanBody[]; readonly unknown: readonly Vehicle[] } {
  const bodies: PlanBody[] = [];
  const unknown: Vehicle[] = [];
  for (const vehicle of plan.vehicles) {
    const mass = masses.get(vehicle.id);
    const lean = leanOf(vehicle, plan.ground);
    const all = mass === undefined ? undefined : vehicleCorners(vehicle, mass, lean);
    if (mass === undefined || all === undefined) unknown.push(vehicle);
    else if (vehicle.cab === undefined)
      bodies.push({
        id: vehicle.id,
        vehicle: vehicle.id,
        name: name(vehicle.name),
        corners: all.map((c) => inPlan(vehicle, c)),
        centerHeight: mass.z.value,
      });
    else {
      const both = withCab(vehicle, vehicle.cab, all, mass.z.value, lean);
      // A cab that weighs as much as the whole: one of the two is wrong.
      if (both.some((b) => b.corners.length === 0)) unknown.push(vehicle);
      else bodies.push(...both);
    }
  }
  return { bodies: bodies.map((b) => withWorkingLoads(b, bodies, plan)), unknown };
}

/** What is left of a weight that is lifted off, as a share: it is held no more, and what lifts it aside tips it. */
const lifted = 0.01;

/**
 * The same body without and with what is set on it or lifts it while crews work, each at its most. A cab of the same
 * vehicle has as many corners, and its own weight in both. Sideways parts are for the push.
 */
function withWorkingLoads(body: PlanBody, all: readonly PlanBody[], plan: Plan): PlanBody {
  const loads = plan.toolLoads.filter((l) => l.direction.z !== 0);
  if (!all.some((b) => b.vehicle === body.vehicle && loads.some((l) => l.on === b.id))) return body;
  const own = loads.filter((l) => l.on === body.id);
  const pull = gravityOn(plan.ground);
  const on = body.corners.map((c): BodyCorner => {
    let [weight, x, y] = [c.weight, c.weight * c.x, c.weight * c.y];
    for (const { direction, force, at } of own) {
      const down = -direction.z * force.high;
      weight += down;
      x += down * (at.x - (at.z * pull.x) / pull.z);
      y += down * (at.y - (at.z * pull.y) / pull.z);
    }
    weight = Math.max(weight, lifted * c.weight);
    const words = [...c.words, term('range.tool-loads')];
    return { ...c, weight, x: x / weight, y: y / weight, words, working: true };
  });
  return { ...body, corners: [...body.corners, ...on] };
}

/** How far a weight comes down off its place for each meter that it stands high, vehicle axes. */
interface Lean {
  /** Because the vehicle pitches: nose down, toward its front. */
  readonly pitch: number;
  /** Because the ground slopes. */
  readonly grade: { readonly x: number; readonly y: number };
}

function leanOf(vehicle: Vehicle, ground: Ground): Lean {
  const pull = gravityOn(ground);
  const { heading } = vehicle;
  const downhill = { x: -pull.x / pull.z, y: -pull.y / pull.z };
  return {
    pitch: vehicle.position.kind === 'pitched' ? -Math.tan(vehicle.position.angle) : 0,
    grade: toVehicle({ at: { x: 0, y: 0 }, heading }, downhill),
  };
}

/** A range of places with the weight at its heights, itself and as it comes down. Unknown heights: any in the body. */
function leaning(place: Interval, height: Interval, pitch: number, grade: number): Leaning {
  const off = (way: number): Interval => (way === 0 ? exactly(0) : scale(height, way));
  const center = add(place, off(pitch));
  return { center, down: add(center, off(grade)) };
}

interface Leaning {
  readonly center: Interval;
  readonly down: Interval;
}

function vehicleCorners(vehicle: Vehicle, mass: BodyMass, lean: Lean): readonly BodyCorner[] | undefined {
  const [weight, x, y] = [mass.weight.value, mass.x.value, mass.y.value];
  if (weight === undefined || x === undefined || y === undefined || !(weight.low > 0)) return undefined;
  const moves = vehicle.cargo.some((c) => c.shifts) ? 'load' : 'center';
  const height = mass.z.value ?? { low: 0, high: vehicle.height };
  const back = leaning(x, height, lean.pitch, lean.grade.x);
  const across = leaning(y, height, 0, lean.grade.y);
  return ends(weight, lightest, heaviest).flatMap((w) =>
    placeEnds(back, term(`range.${moves}-front`), term(`range.${moves}-rear`)).flatMap((a) =>
      placeEnds(across, term('range.driver-side'), term('range.passenger-side')).map(
        (b): BodyCorner => ({
          weight: w.value,
          x: a.down,
          y: b.down,
          center: { x: a.center, y: b.center },
          words: [...w.words, ...a.words, ...b.words],
        }),
      ),
    ),
  );
}

const placeEnds = ({ center, down }: Leaning, low: Message, high: Message) =>
  center.low === center.high && down.low === down.high
    ? [{ center: center.low, down: down.low, words: [] }]
    : [
        { center: center.low, down: down.low, words: [low] },
        { center: center.high, down: down.high, words: [high] },
      ];

/** From vehicle axes to plan axes. Where weight comes down at its center, that is said once. */
function inPlan(vehicle: Vehicle, { weight, x, y, center, words }: BodyCorner): BodyCorner {
  const down = { ...toPlan(vehicle, { x, y }), weight, words };
  return center === undefined || (center.x === x && center.y === y)
    ? down
    : { ...down, center: toPlan(vehicle, center) };
}

const lightest = term('range.lightest');
const heaviest = term('range.heaviest');

const ends = ({ low, high }: Interval, lowWords: Message, highWords: Message) =>
  low === high
    ? [{ value: low, words: [] }]
    : [
        { value: low, words: [lowWords] },
        { value: high, words: [highWords] },
      ];

/**
 * The cab and the rest of the vehicle, corner for corner: what the cab weighs more, the rest weighs less. Both have
 * the same number of corners, in the same order.
 */
function withCab(
  vehicle: Vehicle,
  cab: Cab,
  all: readonly BodyCorner[],
  centerHeight: Interval | undefined,
  lean: Lean,
): readonly PlanBody[] {
  const back = leaning(cab.center.x, cab.center.z, lean.pitch, lean.grade.x);
  const across = leaning(exactly(0), cab.center.z, 0, lean.grade.y);
  const cabs = ends(cab.weight, lightest, heaviest).flatMap((w) =>
    placeEnds(back, term('range.center-front'), term('range.center-rear')).map((a): BodyCorner => {
      // Of the sideways lean of a cab the far end counts: it is a hand's breadth at most.
      const far = Math.abs(across.down.low) > Math.abs(across.down.high) ? across.down.low : across.down.high;
      const words = [...w.words, ...a.words];
      return { weight: w.value, x: a.down, y: far, center: { x: a.center, y: 0 }, words };
    }),
  );
  const pairs = cabs
    .flatMap((c) => all.map((v) => ({ c, v, rest: v.weight - c.weight })))
    .filter(({ rest }) => rest > 0);
  const others = pairs.map(({ c, v, rest }): BodyCorner => {
    const left = (whole: PlanPoint, part: PlanPoint): PlanPoint => ({
      x: (v.weight * whole.x - c.weight * part.x) / rest,
      y: (v.weight * whole.y - c.weight * part.y) / rest,
    });
    const center = left(v.center ?? v, c.center ?? c);
    return { weight: rest, ...left(v, c), center, words: v.words };
  });
  const cabCorners = pairs.map(({ c }) => c);
  const id = cabBody(vehicle);
  const corners = (list: readonly BodyCorner[]) => list.map((c) => inPlan(vehicle, c));
  return [
    { id: vehicle.id, vehicle: vehicle.id, name: name(vehicle.name), corners: corners(others), centerHeight },
    {
      id,
      vehicle: vehicle.id,
      name: message('element.cab', { vehicle: name(vehicle.name) }),
      corners: corners(cabCorners),
      centerHeight: cab.center.z,
    },
  ];
}

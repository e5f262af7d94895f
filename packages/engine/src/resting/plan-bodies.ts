import type { BodyMass } from '../mass/body-mass.js';
import type { Interval } from '../model/interval.js';
import type { Plan } from '../model/plan.js';
import type { ElementId } from '../model/ref.js';
import type { Cab, Vehicle } from '../model/vehicle.js';
import { toPlan } from '../vehicle/frame.js';
import { cabBody } from '../workings/support-points.js';

/** A vehicle, or a cab on springs of its own, as one rigid body. */
export interface PlanBody {
  readonly id: ElementId;
  readonly vehicle: ElementId;
  readonly name: string;
  /** Every corner of its ranges of weight and place, plan axes. */
  readonly corners: readonly BodyCorner[];
  /** Centre of gravity above the ground. */
  readonly centreHeight: Interval | undefined;
}

export interface BodyCorner {
  readonly weight: number;
  readonly x: number;
  readonly y: number;
  /** `heaviest, centre farthest back`. Empty where nothing is a range. */
  readonly words: string;
  /** With the upward and downward part of the plan's working loads in the weight. */
  readonly working?: true;
}

/**
 * The bodies of a plan. The weight of a vehicle includes its cab; a cab on springs of its own is taken out of it.
 *
 * @returns also the vehicles whose weight or centre is not known: nothing can be said about them.
 */
export function planBodies(
  plan: Plan,
  masses: ReadonlyMap<ElementId, BodyMass>,
): { readonly bodies: readonly PlanBody[]; readonly unknown: readonly Vehicle[] } {
  const bodies: PlanBody[] = [];
  const unknown: Vehicle[] = [];
  for (const vehicle of plan.vehicles) {
    const mass = masses.get(vehicle.id);
    const all = mass === undefined ? undefined : vehicleCorners(vehicle, mass);
    if (mass === undefined || all === undefined) unknown.push(vehicle);
    else if (vehicle.cab === undefined)
      bodies.push({
        id: vehicle.id,
        vehicle: vehicle.id,
        name: vehicle.name,
        corners: all.map((c) => ({ ...toPlan(vehicle, c), weight: c.weight, words: c.words })),
        centreHeight: mass.z.value,
      });
    else {
      const both = withCab(vehicle, vehicle.cab, all, mass.z.value);
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
  const loads = plan.workingLoads.filter((l) => l.direction.z !== 0);
  if (!all.some((b) => b.vehicle === body.vehicle && loads.some((l) => l.on === b.id))) return body;
  const own = loads.filter((l) => l.on === body.id);
  const on = body.corners.map((c): BodyCorner => {
    let [weight, x, y] = [c.weight, c.weight * c.x, c.weight * c.y];
    for (const { direction, force, at } of own) {
      const down = -direction.z * force.high;
      weight += down;
      x += down * at.x;
      y += down * at.y;
    }
    weight = Math.max(weight, lifted * c.weight);
    const words = [c.words, workingWords].filter((t) => t !== '').join(', ');
    return { weight, x: x / weight, y: y / weight, words, working: true };
  });
  return { ...body, corners: [...body.corners, ...on] };
}

const workingWords = 'with the working loads on';

function vehicleCorners(vehicle: Vehicle, mass: BodyMass): readonly BodyCorner[] | undefined {
  const [weight, x, y] = [mass.weight.value, mass.x.value, mass.y.value];
  if (weight === undefined || x === undefined || y === undefined || !(weight.low > 0)) return undefined;
  const sides = vehicle.cargo.some((c) => c.shifts) ? 'its load shifted ' : 'centre farthest ';
  return ends(weight, 'lightest', 'heaviest').flatMap((w) =>
    ends(x, `${sides}to its front`, `${sides}to its rear`).flatMap((a) =>
      ends(y, 'to the driver side', 'to the passenger side').map((b) => ({
        weight: w.value,
        x: a.value,
        y: b.value,
        words: [w.words, a.words, b.words].filter((t) => t !== '').join(', '),
      })),
    ),
  );
}

const ends = ({ low, high }: Interval, lowWords: string, highWords: string) =>
  low === high
    ? [{ value: low, words: '' }]
    : [
        { value: low, words: lowWords },
        { value: high, words: highWords },
      ];

/**
 * The cab and the rest of the vehicle, corner for corner: what the cab weighs more, the rest weighs less. Both have
 * the same number of corners, in the same order.
 */
function withCab(
  vehicle: Vehicle,
  cab: Cab,
  all: readonly BodyCorner[],
  centreHeight: Interval | undefined,
): readonly PlanBody[] {
  const cabs = ends(cab.weight, 'lightest', 'heaviest').flatMap((w) =>
    ends(cab.centre.x, 'centre farthest to its front', 'centre farthest to its rear').map((a) => ({
      weight: w.value,
      x: a.value,
      y: 0,
      words: [w.words, a.words].filter((t) => t !== '').join(', '),
    })),
  );
  const pairs = cabs
    .flatMap((c) => all.map((v) => ({ c, v, rest: v.weight - c.weight })))
    .filter(({ rest }) => rest > 0);
  const placed = (corners: readonly BodyCorner[]) =>
    corners.map((c) => ({ ...toPlan(vehicle, c), weight: c.weight, words: c.words }));
  return [
    {
      id: vehicle.id,
      vehicle: vehicle.id,
      name: vehicle.name,
      corners: placed(
        pairs.map(({ c, v, rest }) => ({
          weight: rest,
          x: (v.weight * v.x - c.weight * c.x) / rest,
          y: (v.weight * v.y) / rest,
          words: v.words,
        })),
      ),
      centreHeight,
    },
    {
      id: cabBody(vehicle),
      vehicle: vehicle.id,
      name: `${vehicle.name} cab`,
      corners: placed(pairs.map(({ c }) => c)),
      centreHeight: cab.centre.z,
    },
  ];
}

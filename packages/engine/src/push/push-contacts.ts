import { type Message, term } from '@cribwright/messages';
import type { Vehicle } from '@cribwright/model';
import { stepToPlan } from '@cribwright/model';
import { lies, limitValue } from '@cribwright/model/internal';
import type { SupportPoint } from '../supports/support-points.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import type { PushContact, Stack } from './push-system.js';

/** What the push model leaves out, on the safe side, or takes for granted. */
export const pushAssumptions: readonly Message[] = [
  term('push.assume-found'),
  term('push.assume-struts'),
  term('push.assume-brakes'),
  term('push.assume-between'),
  term('push.assume-lying'),
  term('push.assume-kingpin'),
  term('push.assume-friction'),
];

/** A place of support as it takes a push: its friction, what keeps a wheel from rolling, what it holds at most. */
export function pushContact(p: SupportPoint, standing: readonly string[], w: SupportWorkings): PushContact {
  const base = { id: p.id, upper: p.upper, lower: p.lower, at: p.at };
  switch (p.kind) {
    case 'tire': {
      const rolls = rolling(p, standing, w);
      return {
        ...base,
        friction: w.plan.ground.surface.frictionTire.low,
        ...(rolls === undefined ? {} : { rolls }),
      };
    }
    case 'part':
      return p.at.z > carriedHigh
        ? { ...base, friction: w.plan.ground.surface.frictionTire.low, ...acrossOnly(p, w) }
        : { ...base, friction: w.plan.ground.surface.frictionTimber.low };
    // Where the friction of sheet metal on this ground is not known, none is counted.
    case 'body':
      return { ...base, friction: gripUnder(p.upper, w) };
    case 'cab mount':
      return { ...base, friction: 0, coupled: true };
    case 'vehicle':
      return { ...base, friction: 0, coupled: w.plan.contacts.some((c) => c.id === p.group && c.coupled) };
    case 'crib':
    case 'step chock':
    case 'strut': {
      const capacity =
        w.cribs().find((c) => c.crib.id === p.element)?.contactCapacity.value?.low ??
        w.plan.stepChocks.find((s) => s.id === p.element)?.capacity;
      // A capacity that nobody knows holds nothing up.
      return {
        ...base,
        friction: Math.min(cribFriction(p, w), gripUnder(p.upper, w)),
        capacity: capacity ?? 0,
      };
    }
  }
}

/**
 * How a vehicle's own metal grips the ground where it lies there. More weight than it carries as built cannot be
 * counted on to move from it to a crib or a strut, so that these grip no better. No limit where it stands.
 */
export function gripUnder(body: string, w: SupportWorkings): number {
  const vehicle = w.vehicles.get(body);
  if (vehicle === undefined || !lies(vehicle)) return Number.POSITIVE_INFINITY;
  return w.plan.ground.surface.frictionBody?.low ?? 0;
}

/** A part carried higher than this, m, sits on another vehicle: a kingpin. */
const carriedHigh = 0.75;

function acrossOnly(p: SupportPoint, w: SupportWorkings): Pick<PushContact, 'rolls'> {
  const vehicle = w.vehicles.get(p.element);
  return vehicle === undefined
    ? {}
    : { rolls: { along: forward(vehicle), heldForward: false, heldBack: false } };
}

const forward = (vehicle: Vehicle) => ({ ...stepToPlan(vehicle, { x: -1, y: 0 }), z: 0 });

/** The least of what a crib can slide on: the metal above it, its own courses, the ground. */
function cribFriction(p: SupportPoint, w: SupportWorkings): number {
  const low = (key: 'friction timber on metal' | 'friction timber on timber') =>
    limitValue(w.plan.policy, key)?.low ?? 0;
  const below =
    p.lower === 'ground' ? w.plan.ground.surface.frictionTimber.low : low('friction timber on metal');
  return Math.min(low('friction timber on metal'), low('friction timber on timber'), below);
}

function rolling(p: SupportPoint, standing: readonly string[], w: SupportWorkings): PushContact['rolls'] {
  const vehicle = w.vehicles.get(p.element);
  const axle = vehicle?.axles.find((a) => p.group === `${vehicle.id}/${a.id}`);
  if (vehicle === undefined || axle === undefined) return undefined;
  const chocks = w.placed.chocks.all.flatMap(({ chock, axle: held }) =>
    chock.vehicle === vehicle.id && standing.includes(chock.id) && held?.id === axle.id ? [chock] : [],
  );
  return {
    along: forward(vehicle),
    heldForward: chocks.some((c) => c.ways !== 'rearward'),
    heldBack: chocks.some((c) => c.ways !== 'forward'),
  };
}

/** Cribs as stacks that may lean over: their base reaches to the middle of the outer contacts. */
export function stacksOf(points: readonly SupportPoint[], w: SupportWorkings): readonly Stack[] {
  return w.cribs().flatMap((c): readonly Stack[] => {
    const contacts = points.filter((p) => p.element === c.crib.id).map((p) => p.id);
    if (contacts.length === 0) return [];
    const xs = c.contacts.map((o) => o.x);
    const ys = c.contacts.map((o) => o.y);
    return [
      {
        id: c.crib.id,
        contacts,
        // Up to where the load comes in: shims raise it.
        height: c.placed.heightWithShims,
        base: { x: [Math.min(...xs), Math.max(...xs)], y: [Math.min(...ys), Math.max(...ys)] },
      },
    ];
  });
}

import type { Plan } from '../plan/plan.js';
import type { ElementId } from '../plan/ref.js';
import type { StrutGear, SupportKind, Timber } from '../plan/support.js';
import type { Around } from './base.js';
import { dressed } from './dressed.js';
import { type PlacedChock, placeChock } from './place-chock.js';
import { type PlacedCrib, placeCrib } from './place-crib.js';
import { type PlacedPad, placePad } from './place-pad.js';
import { type PlacedStepChock, placeStepChock } from './place-step-chock.js';
import { type PlacedStrut, placeStrut } from './place-strut.js';
import { type PlacedTie, placeTie } from './place-tie.js';
import { type PlacedVehicle, placeVehicle } from './place-vehicle.js';

/**
 * All that follows from a plan's text and its geometry alone: where everything is, and how high, wide, long and steep.
 * The checks, the drawings, the sheets and the language read it, and derive none of it again. Plan axes, SI.
 */
export interface PlacedPlan {
  /** The plan with its vehicles as they lie and its timbers as the policy has them dressed. */
  readonly plan: Plan;
  readonly vehicles: Placed<PlacedVehicle>;
  readonly cribs: Placed<PlacedCrib>;
  readonly stepChocks: Placed<PlacedStepChock>;
  readonly struts: Placed<PlacedStrut>;
  readonly ties: Placed<PlacedTie>;
  readonly chocks: Placed<PlacedChock>;
  readonly pads: Placed<PlacedPad>;
  /** What placing one more support at hand of these needs to know. */
  readonly around: Around;
}

/** What a support of each kind becomes once it is placed. */
interface PlacedSupport {
  readonly crib: PlacedCrib;
  readonly 'step chock': PlacedStepChock;
  readonly strut: PlacedStrut;
  readonly tie: PlacedTie;
  readonly chock: PlacedChock;
  readonly pad: PlacedPad;
}

/** Elements of one kind, in the order of the plan, and by their id. */
export interface Placed<T> {
  readonly all: readonly T[];
  readonly byId: ReadonlyMap<ElementId, T>;
}

const known = new WeakMap<Plan, PlacedPlan>();

/** Places a plan, once: the same plan gives the same object again, and so does the plan that is in it. */
export function place(plan: Plan): PlacedPlan {
  const before = known.get(plan);
  if (before !== undefined) return before;
  const placed = placeNew(plan);
  known.set(plan, placed);
  known.set(placed.plan, placed);
  return placed;
}

function placeNew(given: Plan): PlacedPlan {
  const vehicles = placedBy(given.vehicles, placeVehicle, (v) => v.given.id);
  const plan = { ...withDressedTimber(given), vehicles: vehicles.all.map((v) => v.vehicle) };
  const lying = new Map(plan.vehicles.map((v) => [v.id, v]));
  const around: Around = { vehicles: lying, pads: plan.pads, reach: joistReach(plan) };
  const struts = placedBy(
    plan.struts,
    (s) => placeStrut(s, plan.pads),
    (s) => s.strut.id,
  );
  const supports: { readonly [K in SupportKind]: Placed<PlacedSupport[K]> } = {
    crib: placedBy(
      plan.cribs,
      (c) => placeCrib(c, around),
      (c) => c.crib.id,
    ),
    'step chock': placedBy(
      plan.stepChocks,
      (c) => placeStepChock(c, around),
      (c) => c.chock.id,
    ),
    strut: struts,
    tie: placedBy(
      plan.ties,
      (t) => placeTie(t, { vehicles: lying, struts: struts.byId }),
      (t) => t.tie.id,
    ),
    chock: placedBy(
      plan.chocks,
      (c) => placeChock(c, lying),
      (c) => c.chock.id,
    ),
    pad: placedBy(
      plan.pads,
      (p) => placePad(p, plan),
      (p) => p.pad.id,
    ),
  };
  return {
    plan,
    vehicles,
    cribs: supports.crib,
    stepChocks: supports['step chock'],
    struts: supports.strut,
    ties: supports.tie,
    chocks: supports.chock,
    pads: supports.pad,
    around,
  };
}

function placedBy<Given, T>(
  list: readonly Given[],
  one: (given: Given) => T,
  idOf: (placed: T) => ElementId,
): Placed<T> {
  const all = list.map(one);
  return { all, byId: new Map(all.map((p) => [idOf(p), p])) };
}

const joistReach = ({ policy }: Plan): number => {
  const { value } = policy.limits['joist reach'];
  return typeof value === 'number' ? value : typeof value === 'string' ? 0 : value.low;
};

/** Cribs and posts of timber as the policy has it dressed. Those of one timber still share it. */
function withDressedTimber(plan: Plan): Plan {
  const seen = new Map<Timber, Timber>();
  const dress = (timber: Timber): Timber => {
    const before = seen.get(timber);
    if (before !== undefined) return before;
    const now = dressed(timber, plan.policy);
    seen.set(timber, now);
    return now;
  };
  const gear = (g: StrutGear): StrutGear =>
    g.kind === 'timber post' && dress(g.timber) !== g.timber ? { ...g, timber: dress(g.timber) } : g;
  return {
    ...plan,
    cribs: plan.cribs.map((c) => (dress(c.timber) === c.timber ? c : { ...c, timber: dress(c.timber) })),
    struts: plan.struts.map((s) => {
      const own = gear(s.gear);
      return own === s.gear ? s : { ...s, gear: own };
    }),
  };
}

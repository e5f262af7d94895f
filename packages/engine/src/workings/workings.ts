import type { GroundResult, MaterialsResult, StageResult, TimelineResult } from '../analysis/analysis.js';
import { type CribWorking, cribWorkings } from '../crib/crib-working.js';
import { type StepChockWorking, stepChockWorking } from '../crib/step-chock-working.js';
import type { Figure } from '../figure/figure.js';
import { groundResults } from '../ground/ground-working.js';
import { governingLoads } from '../loss/governing-loads.js';
import { type LossWorking, lossWorkingSteps } from '../loss/loss-working.js';
import { stagesOf } from '../loss/stage-results.js';
import { type BodyMass, bodyMass } from '../mass/body-mass.js';
import { materialsOf } from '../materials/materials.js';
import type { Plan } from '../model/plan.js';
import type { PolicyKey } from '../model/policy.js';
import type { ElementId } from '../model/ref.js';
import type { Vehicle } from '../model/vehicle.js';
import { timelineOf } from '../order/timeline.js';
import { type PlacedPlan, place } from '../placed/place.js';
import { limitFigure } from '../policy/limit.js';
import { type PushRose, pushRose } from '../push/push-rose.js';
import { type StrutWorking, strutWorking } from '../strut/strut-working.js';
import { type TieWorking, tieWorking } from '../strut/tie-working.js';
import type { GoverningLoad } from './governing-load.js';
import { LoadsLater } from './loads-later.js';
import { type Stepwise, stepwise } from './stepwise.js';

export interface AnalyzeOptions {
  /** ISO date of the reader's day, for acceptances that run out. The engine has no clock. */
  readonly today?: string;
  /** Also work out how hard a push the set-up holds: the one heavy model. */
  readonly push?: boolean;
  /** Also write out the sums of the load cases, to be followed on paper. */
  readonly paper?: boolean;
  /** Try the ends of the ranges alone, though a load may be higher between: for whoever types. The whole must follow. */
  readonly endsAlone?: boolean;
  /** Leave out every load, and the rules that hang on one: for whoever wants the rest at once. */
  readonly loads?: false;
}

/**
 * What rules and results share: each part worked out once, when first asked for. A part that fails fails only
 * those who ask for it.
 */
export interface Workings {
  /** The plan as it stands: vehicles as they lie, timbers as the policy has them dressed. */
  readonly plan: Plan;
  /** All that follows from its geometry alone. */
  readonly placed: PlacedPlan;
  readonly options: AnalyzeOptions;
  readonly limit: (key: PolicyKey) => Figure;
  readonly vehicles: ReadonlyMap<ElementId, Vehicle>;
  readonly masses: () => ReadonlyMap<ElementId, BodyMass>;
  readonly cribs: () => readonly CribWorking[];
  readonly stepChocks: () => readonly StepChockWorking[];
  readonly struts: () => readonly StrutWorking[];
  readonly ties: () => readonly TieWorking[];
  readonly ground: () => readonly GroundResult[];
  readonly timeline: () => TimelineResult | undefined;
  readonly materials: () => MaterialsResult;
  /** How it all rests, stage by stage and loss by loss; `stages` is the same for the views. */
  readonly resting: Stepwise<LossWorking>;
  readonly stages: () => readonly StageResult[];
  /** How hard a push it holds, or why that is not known. Heavy: worked out when asked for. */
  readonly push: () => PushRose;
  /** By the id of the reaction (`crib/A#1`) and, for the sum of its contacts, of the support (`crib/A`). */
  readonly loads: () => ReadonlyMap<string, GoverningLoad>;
}

/** Runs `make` at most once. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

export function workingsOf(given: Plan, options: AnalyzeOptions = {}): Workings {
  const placed = place(given);
  const { plan } = placed;
  const { vehicles } = placed.around;
  const resting = stepwise(() => {
    if (options.loads === false) throw new LoadsLater();
    return lossWorkingSteps(w);
  });
  const w: Workings = {
    plan,
    placed,
    options,
    vehicles,
    limit: (key) => limitFigure(plan.policy, key, plan.display),
    masses: once(() => new Map(plan.vehicles.map((v) => [v.id, bodyMass(v, plan.display)]))),
    cribs: once(() => cribWorkings(placed)),
    stepChocks: once(() => placed.stepChocks.all.map((s) => stepChockWorking(s, plan))),
    struts: once(() => placed.struts.all.map((s) => strutWorking(s, plan))),
    ties: once(() => placed.ties.all.map((t) => tieWorking(t, plan))),
    ground: once(() => groundResults(w)),
    timeline: once(() => timelineOf(plan)),
    materials: once(() => materialsOf(plan)),
    resting,
    push: once(() => pushRose(w)),
    stages: once(() => stagesOf(w, resting())),
    loads: once(() => governingLoads(w, resting())),
  };
  return w;
}

/** A vehicle's name, or the id where the plan has no such vehicle. */
export const nameOf = (w: Workings, id: ElementId): string => w.vehicles.get(id)?.name ?? id;

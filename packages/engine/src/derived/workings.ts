import type { Plan } from '@cribwright/model';
import { place } from '@cribwright/model';
import { limitFigure } from '@cribwright/model/internal';
import type { GroundResult, MaterialsResult, StageResult, TimelineResult } from '../analysis/analysis.js';
import { cribWorkings } from '../crib/crib-working.js';
import { stepChockWorking } from '../crib/step-chock-working.js';
import { groundResults } from '../ground/ground-working.js';
import { governingLoads } from '../loss/governing-loads.js';
import { type LossWorking, lossWorkingSteps } from '../loss/loss-working.js';
import { stagesOf } from '../loss/stage-results.js';
import { bodyMass } from '../mass/body-mass.js';
import { materialsOf } from '../materials/materials.js';
import { timelineOf } from '../order/timeline.js';
import { pushRosesSteps, type VehicleRose } from '../side-push/push-rose.js';
import { standingSteps } from '../standing/run-standing.js';
import type { Standing } from '../standing/standing.js';
import { withStandingLoads } from '../standing/standing-loads.js';
import { type Stepwise, stepwise } from '../stepwise/stepwise.js';
import { strutWorking } from '../strut/strut-working.js';
import { tieWorking } from '../strut/tie-working.js';
import type { LoadWorkings } from '../supports/load-workings.js';
import type { AnalyzeOptions } from '../supports/support-workings.js';
import { LoadsLater } from './loads-later.js';

/**
 * What rules and results share: each part worked out once, when first asked for. A part that fails fails only
 * those who ask for it.
 */
export interface Workings extends LoadWorkings {
  readonly ground: () => readonly GroundResult[];
  readonly timeline: () => TimelineResult | undefined;
  readonly materials: () => MaterialsResult;
  /** How it all rests, stage by stage and loss by loss; `stages` is the same for the views. */
  readonly resting: Stepwise<LossWorking>;
  readonly stages: () => readonly StageResult[];
  /** How it all stands in space, stage by stage, loss by loss. Heavy: asked for with the pushes alone. */
  readonly standing: Stepwise<Standing>;
  /** How hard a push each vehicle holds, or why that is not known; the main vehicle first. Heavy. */
  readonly pushes: Stepwise<readonly VehicleRose[]>;
}

/** Runs `make` at most once. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/**
 * All that can be worked out of a plan. Nothing is until it is first asked for; each part is worked out once.
 *
 * @param given as the language or a program gives it; it is placed here
 * @param options without `today` no acceptance runs out
 * @throws the parts that hang on a load throw when they are asked for, where `options.loads` is false
 */
export function workingsOf(given: Plan, options: AnalyzeOptions = {}): Workings {
  const placed = place(given);
  const { plan } = placed;
  const { vehicles } = placed.around;
  const resting = stepwise(() => {
    if (options.loads === false) throw new LoadsLater();
    return lossWorkingSteps(w);
  });
  const standing = stepwise(() => standingSteps(w));
  const w: Workings = {
    plan,
    placed,
    options,
    vehicles,
    limit: (key) => limitFigure(plan.policy, key),
    masses: once(() => new Map(plan.vehicles.map((v) => [v.id, bodyMass(v)]))),
    cribs: once(() => cribWorkings(placed)),
    stepChocks: once(() => placed.stepChocks.all.map(stepChockWorking)),
    struts: once(() => placed.struts.all.map(strutWorking)),
    ties: once(() => placed.ties.all.map(tieWorking)),
    ground: once(() => groundResults(w)),
    timeline: once(() => timelineOf(plan)),
    materials: once(() => materialsOf(plan)),
    resting,
    standing,
    pushes: stepwise(() => pushRosesSteps(w)),
    stages: once(() => stagesOf(w, resting())),
    loads: once(() => {
      const upright = governingLoads(w, resting());
      return options.push === true ? withStandingLoads(w, upright, standing()) : upright;
    }),
  };
  return w;
}

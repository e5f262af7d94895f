import type { Analysis, AnalyzeOptions } from '@cribwright/engine';
import { type Workings, workingsOf } from '@cribwright/engine';
import {
  assumptions,
  beforeLoads,
  bodyResults,
  expectationResults,
  inOneGo,
  noLoads,
  supportResults,
} from '@cribwright/engine/internal';
import type { Plan } from '@cribwright/model';
import { rules } from '../generated/rule-index.js';
import { bySeverity, runRulesInSteps } from './run.js';

/**
 * All that the engine has to say about a plan. Never throws on a plan, however wrong: what could not be worked out
 * is said in a finding.
 */
export const analyze = (plan: Plan, options: AnalyzeOptions = {}): Analysis =>
  inOneGo(analyzeInSteps(plan, options));

/**
 * The same in steps: the heavy parts stop after each corner of the ranges, each direction of the push and each rule,
 * so that whoever drives it may go on later, or drop it.
 */
export function* analyzeInSteps(plan: Plan, options: AnalyzeOptions = {}): Generator<void, Analysis> {
  const w = workingsOf(plan, options);
  try {
    if (options.loads !== false) yield* w.resting.steps();
    if (options.push === true) {
      yield* w.standing.steps();
      yield* w.pushes.steps();
    }
  } catch {
    // The rules that read these fail on their own, and say so.
  }
  return yield* analysisOf(w);
}

function* analysisOf(w: Workings): Generator<void, Analysis> {
  const { plan, options } = w;
  const findings = [...(yield* runRulesInSteps(rules, w))].sort(bySeverity);
  const supports = attempt(
    () =>
      options.loads === false
        ? supportResults(noLoads(w), findings).map(beforeLoads)
        : supportResults(w, findings),
    [],
  );
  return {
    ...(options.loads === false ? { pending: 'loads' } : {}),
    plan: { title: plan.title, ref: plan.ref },
    bodies: attempt(() => bodyResults(w), []),
    supports,
    stages: attempt(() => w.stages(), []),
    push: attempt(() => (options.push === true ? pushOf(w) : undefined), undefined),
    ground: attempt(() => w.ground(), []),
    timeline: attempt(() => w.timeline(), undefined),
    materials: attempt(() => w.materials(), undefined),
    findings,
    expectations:
      options.loads === false ? [] : attempt(() => expectationResults(plan, { supports, findings }), []),
    assumptions,
  };
}

/** The push rose of the main vehicle where it could be worked out. Where not, the rule that reads it says why. */
function pushOf(w: Workings): Analysis['push'] {
  const rose = w.pushes()[0]?.rose;
  return rose === undefined || 'why' in rose ? undefined : rose;
}

/** Results that break are left out; the rule that needs the same part has already said so as a finding. */
function attempt<T>(make: () => T, without: T): T {
  try {
    return make();
  } catch {
    return without;
  }
}

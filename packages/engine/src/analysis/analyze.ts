import type { Plan } from '../model/plan.js';
import { pushRoseSteps } from '../push/push-rose.js';
import { expectationResults } from '../review/expectations.js';
import { rules } from '../rules/generated/rule-index.js';
import { bySeverity, runRules } from '../rules/run.js';
import { type AnalyzeOptions, type Workings, workingsOf } from '../workings/workings.js';
import type { Analysis } from './analysis.js';
import { assumptions } from './assumptions.js';
import { bodyResults } from './body-results.js';
import { supportResults } from './support-results.js';

/**
 * All that the engine has to say about a plan. Never throws on a plan, however wrong: what could not be worked out
 * is said in a finding.
 */
export function analyze(plan: Plan, options: AnalyzeOptions = {}): Analysis {
  return analysisOf(workingsOf(plan, options));
}

/**
 * The same as `analyze` with the push, in steps: the heavy part stops after each direction, so that whoever drives
 * it may go on later, or drop it.
 */
export function* analyzeInSteps(plan: Plan, options: AnalyzeOptions = {}): Generator<void, Analysis> {
  const w = workingsOf(plan, { ...options, push: true });
  let push = w.push;
  try {
    const rose = yield* pushRoseSteps(w);
    push = () => rose;
  } catch {
    // The rule that reads the push fails on its own, and says so.
  }
  return analysisOf({ ...w, push });
}

function analysisOf(w: Workings): Analysis {
  const { plan, options } = w;
  const findings = [...runRules(rules, w)].sort(bySeverity);
  const supports = attempt(() => supportResults(w, findings), []);
  return {
    plan: { title: plan.title, ref: plan.ref },
    bodies: attempt(() => bodyResults(w), []),
    supports,
    stages: attempt(() => w.stages(), []),
    push: attempt(() => (options.push === true ? pushOf(w) : undefined), undefined),
    ground: attempt(() => w.ground(), []),
    timeline: attempt(() => w.timeline(), undefined),
    materials: attempt(() => w.materials(), undefined),
    findings,
    expectations: attempt(() => expectationResults(plan, { supports, findings }), []),
    assumptions,
  };
}

/** The push rose where it could be worked out. Where not, the rule that reads it says why. */
function pushOf(w: Workings): Analysis['push'] {
  const rose = w.push();
  return 'why' in rose ? undefined : rose;
}

/** Results that break are left out; the rule that needs the same part has already said so as a finding. */
function attempt<T>(make: () => T, without: T): T {
  try {
    return make();
  } catch {
    return without;
  }
}

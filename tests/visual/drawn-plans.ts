import type { Analysis } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';
import { samplePlans } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { readPlans } from '../examples/read-plans.js';

export interface DrawnPlan {
  readonly name: string;
  readonly plan: Plan;
  readonly analysis: Analysis;
}

/** Every plan of the examples, as the command line reads them. */
export async function examplePlans(): Promise<readonly DrawnPlan[]> {
  const report = await readPlans();
  return report.files.flatMap(({ path, plans }) =>
    plans.map(({ reply }, i) => ({
      name: `${path
        .replace(/^examples\//, '')
        .replace(/\.crib$/, '')
        .replaceAll('/', '-')}${plans.length > 1 ? `-${i + 1}` : ''}`,
      plan: reply.plan,
      analysis: reply.analysis,
    })),
  );
}

/** The sample plans of the engine, sound and faulty; with the push worked out for those that are named. */
export const sampleDrawings = (
  pushed: readonly string[] = [],
  names: readonly string[] = Object.keys(samplePlans),
): readonly DrawnPlan[] =>
  Object.entries(samplePlans)
    .filter(([name]) => names.includes(name))
    .map(([name, plan]) => ({ name, plan, analysis: analyze(plan, { push: pushed.includes(name) }) }));

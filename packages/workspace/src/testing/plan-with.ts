import { wordsIn } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { openWorkspace } from '../workspace/open-workspace.js';

const uri = 'file:///alder-ridge/plans/case.crib';

/** The checks of a text, as a test reads them. Its first plan must have been made. */
export function made(text: string) {
  const workspace = openWorkspace({
    files: { read: async () => undefined },
    folders: ['file:///alder-ridge'],
  });
  workspace.put(uri, text, 1);
  const checked = workspace.check(uri);
  const problems = checked.problems.filter((p) => p.source === 'text');
  return { checked, problems, codes: problems.map((p) => p.code), plan: checked.plans[0]?.plan };
}

/** A plan around a loaded trailer, with more lines in it. Fails where the text has problems. */
export function planWith(lines: string, before = ''): Plan {
  const { plan, problems } = made(`use "library/vehicles.crib"
use "library/gear.crib"
${before}
plan "Case" {
  ground { surface asphalt }
  vehicle trailer : VanTrailer53 { cargo 20,000 lb from 4 ft to 48 ft }
${lines}
}
`);
  const wrong = problems.filter((p) => p.severity === 'danger');
  if (wrong.length > 0 || !plan)
    throw new Error(wrong.map((p) => wordsIn('en', 'us').message(p.message)).join('\n') || 'no plan');
  return plan;
}

export { foot, inch, poundForce as lb } from '@cribwright/units';

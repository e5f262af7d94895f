import { english } from '@cribwright/messages/testing';
import { openWorkspace, type PlanReply } from '@cribwright/workspace';

const uri = 'file:///library-check/plan.crib';

/** What the bundled library comes to in a plan: the text is read, bound and made into a plan as a user's is. */
export async function planFrom(body: string): Promise<PlanReply['plan']> {
  const workspace = openWorkspace({
    files: { read: async () => undefined },
    folders: ['file:///library-check'],
  });
  const uses = ['vehicles', 'gear', 'cargo'].map((name) => `use "library/${name}.crib"\n`).join('');
  const ground = body.includes('ground {') ? '' : 'ground { surface asphalt }\n';
  workspace.put(uri, `${uses}plan "Library" {\n${ground}${body}\n}\n`, 1);
  await workspace.load(uri);
  const checked = workspace.check(uri);
  const wrong = checked.problems.filter((p) => p.source === 'text' && p.severity === 'danger');
  const [reply] = checked.plans;
  if (reply === undefined || reply.partial || wrong.length > 0)
    throw new Error(wrong.map((p) => english(p.message)).join('; ') || 'the library could not be read');
  return reply.plan;
}

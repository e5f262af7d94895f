import { workInSteps } from '@cribwright/engine/internal';
import { message, name, term } from '@cribwright/messages';
import type { Plan, Strut } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function unlocked(strut: Strut, plan: Plan): RuleFinding | undefined {
  const { id, gear, lock } = strut;
  if (gear.kind === 'timber post' || lock === 'pinned' || lock === 'collar') return undefined;
  const at = { element: id, property: 'lock' };
  // Where the plan's steps lock struts, one of them locks this one too.
  const steps = plan.steps.filter((s) => s.action === 'lock');
  const inSteps =
    steps.length === 0 || steps.some((s) => s.targets.includes(id))
      ? []
      : workInSteps(plan, [{ action: 'lock', name: strut.name }], [id]);
  return {
    subject: { element: id },
    at: lock === undefined ? { element: id } : at,
    message: message(lock === undefined ? 'strut-lock.no-lock' : 'strut-lock.pump-only', {
      strut: name(strut.name),
    }),
    fixes: [
      {
        title: message('strut-lock.fix-pin', { strut: name(strut.name) }),
        edits: [{ kind: 'set', at, text: 'pinned' }, ...inSteps],
        safe: false,
      },
    ],
  };
}

export const rule: Rule = {
  id: 'strut-lock',
  title: term('strut-lock.title'),
  family: 'struts and ties',
  severity: 'danger',
  judges: 'element',
  protects: term('strut-lock.protects'),
  sources: [practice],
  compares: [],
  check: (w) => w.plan.struts.flatMap((s) => unlocked(s, w.plan) ?? []),
};

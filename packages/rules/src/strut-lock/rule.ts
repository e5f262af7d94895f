import { message, name, term } from '@cribwright/messages';
import type { Strut } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function unlocked(strut: Strut): RuleFinding | undefined {
  const { id, gear, lock } = strut;
  if (gear.kind === 'timber post' || lock === 'pinned' || lock === 'collar') return undefined;
  const at = { element: id, property: 'lock' };
  return {
    subject: { element: id },
    at: lock === undefined ? { element: id } : at,
    message: message(lock === undefined ? 'strut-lock.no-lock' : 'strut-lock.pump-only', {
      strut: name(strut.name),
    }),
    fixes: [
      {
        title: term('strut-lock.fix-pin'),
        edits: [{ kind: 'set', at, text: 'pinned' }],
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
  check: (w) => w.plan.struts.flatMap((s) => unlocked(s) ?? []),
};

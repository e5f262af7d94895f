import { messages } from '../../finding/message.js';
import type { Strut } from '../../model/support.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'no-lock':
    'Strut {strut}: nothing says how it is locked. Pin it, or back it off onto its lock, before anyone relies on it.',
  'pump-only':
    'Strut {strut} stands on its pump alone. A leak lets it down. Pin it, or back it off onto its lock.',
  'fix-pin': 'Lock it: pinned',
} as const;
const say = messages('strut-lock', words);

function unlocked({ id, name, gear, lock }: Strut): RuleFinding | undefined {
  if (gear.kind === 'timber post' || lock === 'pinned' || lock === 'collar') return undefined;
  const at = { element: id, property: 'lock' };
  return {
    subject: { element: id },
    at: lock === undefined ? { element: id } : at,
    message: say(lock === undefined ? 'no-lock' : 'pump-only', { strut: name }),
    fixes: [
      {
        title: say('fix-pin', {}),
        edits: [{ kind: 'set', at, text: 'pinned' }],
        safe: false,
      },
    ],
  };
}

export const rule: Rule = {
  id: 'strut-lock',
  title: 'Strut without a mechanical lock',
  family: 'struts and ties',
  severity: 'danger',
  protects: 'A strut that stands on oil or air alone comes down when a seal or hose lets go.',
  sources: [practice],
  compares: [],
  words,
  check: (w) => w.plan.struts.flatMap((s) => unlocked(s) ?? []),
};

import { messages } from '../../finding/message.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'no-unit':
    'Nobody says which responding, so nothing is known of what they carry. Name them after `responding`.',
  'empty-unit': '{unit} responds, and its cache lists nothing. What it carries is not known.',
} as const;
const say = messages('cache-unknown', words);

function unknown(w: Workings): readonly RuleFinding[] {
  const { plan } = w;
  if (w.materials().rows.length === 0) return [];
  if (plan.units.length === 0) return [{ subject: plan.ref, at: plan.ref, message: say('no-unit', {}) }];
  return plan.units
    .filter((u) => u.carries.length === 0)
    .map((u) => ({
      subject: { element: u.id },
      at: u.ref,
      severity: 'warning',
      message: say('empty-unit', { unit: u.name }),
    }));
}

export const rule: Rule = {
  id: 'cache-unknown',
  title: 'Cache that nobody knows',
  family: 'stock',
  severity: 'note',
  protects: 'A plan that nobody can supply is found out on scene.',
  sources: [practice],
  compares: [],
  words,
  check: unknown,
};

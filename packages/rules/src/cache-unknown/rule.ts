import type { Workings } from '@cribwright/engine';
import { message, name, term } from '@cribwright/messages';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function unknown(w: Workings): readonly RuleFinding[] {
  const { plan } = w;
  if (w.materials().rows.length === 0) return [];
  if (plan.units.length === 0)
    return [{ subject: plan.ref, at: plan.ref, message: term('cache-unknown.no-unit') }];
  return plan.units
    .filter((u) => u.carries.length === 0)
    .map((u) => ({
      subject: { element: u.id },
      at: u.ref,
      severity: 'warning',
      message: message('cache-unknown.empty-unit', { unit: name(u.name) }),
    }));
}

export const rule: Rule = {
  id: 'cache-unknown',
  title: term('cache-unknown.title'),
  family: 'stock',
  severity: 'note',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('cache-unknown.protects'),
  sources: [practice],
  compares: [],
  check: unknown,
};

import type { Workings } from '@cribwright/engine';
import { type Figure, message, name, shown, term } from '@cribwright/messages';
import type { PolicyLimit } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function loosened(limit: PolicyLimit, w: Workings): RuleFinding | undefined {
  if (!limit.loosened) return undefined;
  const { policy } = w.plan;
  const figure = w.limit(limit.key);
  const before = limit.replaces?.value;
  const number = (value: Figure['value']) =>
    message('policy-loosened.number', { value: shown({ ...figure, value }) });
  const shipped =
    before === undefined
      ? term('policy-loosened.shipped-value')
      : typeof before === 'string'
        ? name(before)
        : number(typeof before === 'number' ? { low: before, high: before } : before);
  const shared = {
    policy: name(policy.name),
    limit: figure.label,
    value: typeof limit.value === 'string' ? name(limit.value) : number(figure.value),
    shipped,
  };
  const reason = limit.reason?.trim() ?? '';
  return {
    subject: { element: policy.id },
    at: limit.ref,
    severity: reason === '' ? 'danger' : 'warning',
    message:
      reason === ''
        ? message('policy-loosened.no-reason', shared)
        : message('policy-loosened.with-reason', { ...shared, reason: name(reason) }),
    figures: [figure],
    related:
      limit.replaces === undefined
        ? []
        : [{ at: limit.replaces.ref, message: term('policy-loosened.replaced-here') }],
  };
}

export const rule: Rule = {
  id: 'policy-loosened',
  title: term('policy-loosened.title'),
  family: 'policy and review',
  severity: 'warning',
  judges: 'element',
  protects: term('policy-loosened.protects'),
  sources: [practice],
  compares: [],
  check: (w) => Object.values(w.plan.policy.limits).flatMap((l) => loosened(l, w) ?? []),
};

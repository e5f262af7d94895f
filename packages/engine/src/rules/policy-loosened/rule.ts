import { shown } from '@cribwright/messages';
import { messages } from '../../finding/message.js';
import type { PolicyLimit } from '../../model/policy.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'with-reason':
    'Policy {policy} lets {limit} be {value}, which is less safe than the {shipped} it replaces. Its reason: {reason}',
  'no-reason':
    'Policy {policy} lets {limit} be {value}, which is less safe than the {shipped} it replaces, and gives no reason. Write why, after `because`.',
  'replaced-here': 'It replaces this.',
} as const;
const say = messages('policy-loosened', words);

function loosened(limit: PolicyLimit, w: Workings): RuleFinding | undefined {
  if (!limit.loosened) return undefined;
  const { policy } = w.plan;
  const figure = w.limit(limit.key);
  const before = limit.replaces?.value;
  const shipped =
    before === undefined
      ? 'value'
      : typeof before === 'string'
        ? before
        : shown({ ...figure, value: typeof before === 'number' ? { low: before, high: before } : before });
  const shared = {
    policy: policy.name,
    limit: limit.key,
    value: typeof limit.value === 'string' ? limit.value : shown(figure),
    shipped,
  };
  const reason = limit.reason?.trim() ?? '';
  return {
    subject: { element: policy.id },
    at: limit.ref,
    severity: reason === '' ? 'danger' : 'warning',
    message: reason === '' ? say('no-reason', shared) : say('with-reason', { ...shared, reason }),
    figures: [figure],
    related:
      limit.replaces === undefined ? [] : [{ at: limit.replaces.ref, message: say('replaced-here', {}) }],
  };
}

export const rule: Rule = {
  id: 'policy-loosened',
  title: 'Limit made less safe',
  family: 'policy and review',
  severity: 'warning',
  protects: 'A limit that was loosened quietly is taken for the usual one by those who rely on the plan.',
  sources: [practice],
  compares: [],
  words,
  check: (w) => Object.values(w.plan.policy.limits).flatMap((l) => loosened(l, w) ?? []),
};

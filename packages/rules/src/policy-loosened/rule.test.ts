import { english } from '@cribwright/messages/testing';
import { type PolicyLimit, shippedPolicy } from '@cribwright/model';
import { planOf } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (change: Partial<PolicyLimit>) => {
  const key = 'height ratio all contacts';
  const limit: PolicyLimit = {
    ...shippedPolicy.limits[key],
    value: 4,
    replaces: { value: 3, ref: { element: 'policy/Shipped', property: key } },
    ...change,
  };
  return check(
    rule,
    planOf({ policy: { ...shippedPolicy, name: 'Ours', limits: { ...shippedPolicy.limits, [key]: limit } } }),
  );
};

it('lets a tightened limit be', () => expect(found({ value: 2 })).toEqual([]));

it('shows a loosened limit with its reason', () => {
  const [finding] = found({ loosened: true, reason: 'longer timbers on trial' });
  expect(finding?.severity).toBe('warning');
  expect(english(finding?.message)).toBe(
    'Policy Ours sets height ratio all contacts to 4, less safe than 3. Reason: longer timbers on trial',
  );
  expect(finding?.related[0]?.at.element).toBe('policy/Shipped');
});

it('is a danger without a reason', () =>
  expect(found({ loosened: true, reason: ' ' })[0]?.severity).toBe('danger'));

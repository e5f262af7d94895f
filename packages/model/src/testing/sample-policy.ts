import { shippedPolicy } from '../generated/shipped-policy.js';
import type { Policy, PolicyKey, PolicyLimit } from '../plan/policy.js';

/** The shipped policy with one limit set otherwise. */
export const policyWith = (key: PolicyKey, value: PolicyLimit['value']): Policy => ({
  ...shippedPolicy,
  limits: { ...shippedPolicy.limits, [key]: { ...shippedPolicy.limits[key], value } },
});

import { inch } from '@cribwright/units';
import type { Policy } from '../plan/policy.js';
import type { Timber } from '../plan/support.js';

/**
 * A timber with the section that the policy counts on. An 8×8 has two published dressed sizes: 7.25 in dry (PS 20:
 * 3/4 in off) and 7.5 in green (1/2 in off; the NDS section table). Other timbers are as their type says.
 */
export function dressed(timber: Timber, policy: Policy): Timber {
  const limit = policy.limits['dressed size of 8x8'];
  if (timber.nominal !== '8x8' || typeof limit.value !== 'string') return timber;
  const size = (limit.value === 'green' ? 7.5 : 7.25) * inch;
  const source = {
    kind: 'policy',
    policy: policy.name,
    limit: 'dressed size of 8x8',
    of: limit.source,
  } as const;
  return { ...timber, width: size, depth: size, dressedSource: source };
}

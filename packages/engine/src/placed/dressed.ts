import type { Policy } from '../model/policy.js';
import type { Timber } from '../model/support.js';
import { limitWord } from '../policy/limit.js';

const inch = 0.0254;

/**
 * An 8×8 has two published dressed sizes: 7.25 in dry (PS 20: 3/4 in off) and 7.5 in green (1/2 in off; the NDS
 * section table). The policy says which counts. Other timbers are as their type says.
 */
export function dressed(timber: Timber, policy: Policy): Timber {
  const choice = limitWord(policy, 'dressed size of 8x8');
  if (timber.nominal !== '8x8' || choice === undefined) return timber;
  const size = (choice === 'green' ? 7.5 : 7.25) * inch;
  const source = {
    kind: 'policy',
    policy: policy.name,
    limit: 'dressed size of 8x8',
    of: policy.limits['dressed size of 8x8'].source,
  } as const;
  return { ...timber, width: size, depth: size, dressedSource: source };
}

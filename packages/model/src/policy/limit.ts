import type { Figure } from '@cribwright/messages';
import { term } from '@cribwright/messages';
import { given } from '../figure/compute.js';
import { angle, count, force, length, ratio, share, stress } from '../figure/units-of.js';
import { exactly, type Interval } from '../plan/interval.js';
import type { Policy, PolicyKey } from '../plan/policy.js';

type Kind = 'length' | 'force' | 'stress' | 'angle' | 'ratio' | 'share' | 'count' | 'word';

/** What kind of value each limit is, and which way is the safe one when it is changed. */
export const limitKinds: Readonly<
  Record<PolicyKey, { readonly kind: Kind; readonly safer: 'lower' | 'higher' | 'neither' }>
> = {
  'crossing stress': { kind: 'stress', safer: 'lower' },
  'crossing basis': { kind: 'word', safer: 'neither' },
  'crossing rounding': { kind: 'force', safer: 'higher' },
  'height ratio all contacts': { kind: 'ratio', safer: 'lower' },
  'height ratio some contacts': { kind: 'ratio', safer: 'lower' },
  'height ratio one contact': { kind: 'ratio', safer: 'lower' },
  'least overhang': { kind: 'length', safer: 'higher' },
  'most overhang': { kind: 'length', safer: 'lower' },
  'wedge travel': { kind: 'length', safer: 'lower' },
  'most shims': { kind: 'length', safer: 'lower' },
  'most packing': { kind: 'length', safer: 'lower' },
  'joist reach': { kind: 'length', safer: 'lower' },
  'contact alignment': { kind: 'length', safer: 'lower' },
  'steepest capture': { kind: 'angle', safer: 'lower' },
  'least strut angle': { kind: 'angle', safer: 'higher' },
  'most strut angle': { kind: 'angle', safer: 'lower' },
  'push margin': { kind: 'share', safer: 'higher' },
  'push height': { kind: 'length', safer: 'higher' },
  'use limit': { kind: 'share', safer: 'lower' },
  'friction timber on timber': { kind: 'ratio', safer: 'lower' },
  'friction timber on metal': { kind: 'ratio', safer: 'lower' },
  'friction strut base': { kind: 'ratio', safer: 'lower' },
  'grade needing chocks': { kind: 'share', safer: 'lower' },
  'dressed size of 8x8': { kind: 'word', safer: 'neither' },
  'axle limit single': { kind: 'force', safer: 'neither' },
  'axle limit tandem': { kind: 'force', safer: 'neither' },
  'gross limit': { kind: 'force', safer: 'neither' },
  'egress width': { kind: 'length', safer: 'higher' },
  'post slenderness': { kind: 'ratio', safer: 'lower' },
  'sudden loss factor': { kind: 'ratio', safer: 'higher' },
  'stiffness spread': { kind: 'ratio', safer: 'higher' },
  'ground under cribs': { kind: 'word', safer: 'neither' },
};

const heads = { length, force, stress, angle, ratio, share, count, word: count } as const;

/** A policy's number, SI. `undefined` where the limit is a word. */
export function limitValue(policy: Policy, key: PolicyKey): Interval | undefined {
  const { value } = policy.limits[key];
  return typeof value === 'number' ? exactly(value) : typeof value === 'string' ? undefined : value;
}

/** A policy's word, for a limit that is a choice. */
export function limitWord(policy: Policy, key: PolicyKey): string | undefined {
  const { value } = policy.limits[key];
  return typeof value === 'string' ? value : undefined;
}

type Dashed<Key extends string> = Key extends `${infer Head} ${infer Rest}` ? `${Head}-${Dashed<Rest>}` : Key;

const dashed = <Key extends string>(key: Key) => key.replaceAll(' ', '-') as Dashed<Key>;

/** A policy's limit as a figure: its source is the policy's line, and behind it the line's own source. */
export function limitFigure(policy: Policy, key: PolicyKey): Figure {
  const limit = policy.limits[key];
  const { kind, safer } = limitKinds[key];
  const rounding = safer === 'lower' ? 'down' : safer === 'higher' ? 'up' : 'nearest';
  const head = heads[kind](key, term(`limit.${dashed(key)}`), rounding, { ref: limit.ref });
  return given(head, limitValue(policy, key), {
    kind: 'policy',
    policy: policy.name,
    limit: key,
    of: limit.source,
  });
}

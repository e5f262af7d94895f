import { type Interval, limitKinds, type Policy, type PolicyKey, type PolicyLimit } from '@cribwright/model';
import { typeChain } from '../binding/file-scope.js';
import type { BoundBlock } from '../bound/bound-file.js';
import { authority, type LimitKind, limitLines, limits, policyKeys } from '../schema/policy.js';
import { outermost } from './expansion.js';
import type { Lowering } from './lowering.js';

/** A policy with every limit: its own, else those of the policies that it extends, down to the shipped one. */
export function policyOf(
  w: Lowering,
  block: BoundBlock | undefined,
  shipped: BoundBlock | undefined,
): Policy | undefined {
  const chain = block ? [...typeChain(block, w.around)] : [];
  // A policy that extends none stands on the shipped one for what it leaves out.
  if (shipped && !chain.includes(shipped)) chain.push(shipped);
  const own = chain[0];
  if (own?.name === undefined) return undefined;
  for (const b of chain) w.placeBlock(`policy/${b.name ?? ''}`, b);
  const found = policyKeys.map((key) => [key, limitOf(w, chain, key)] as const);
  if (found.some(([, limit]) => limit === undefined)) return undefined;
  const who = w.propertyOf(chain, authority)?.values.authority.text;
  return {
    id: `policy/${own.name}`,
    name: own.title ?? own.name,
    extends: chain.slice(1).flatMap((b) => b.name ?? []),
    ...(who === undefined ? {} : { authority: who }),
    limits: Object.fromEntries(found) as Policy['limits'],
    ref: { element: `policy/${own.name}` },
  };
}

function limitOf(w: Lowering, chain: readonly BoundBlock[], key: PolicyKey): PolicyLimit | undefined {
  const all = chain.flatMap((b) => w.propertiesOf(b, limitLines[key]).slice(0, 1));
  const made = all.map((said) => {
    const value = limitValue(w, said.block, said.values, limits[key]);
    const ref = { element: `policy/${said.block.name ?? ''}`, property: key };
    return value === undefined ? undefined : { said, value, ref };
  });
  const first = made[0];
  const next = made.find((m, i) => i > 0 && m !== undefined);
  const use = first ?? next;
  if (!use) return undefined;
  const source = w.source(use.said.values, [use.said.block]);
  const replaced = use === first && next && !same(use.value, next.value) ? next : undefined;
  const reason = use.said.values.reason?.text;
  return {
    key,
    value: use.value,
    source,
    ref: use.ref,
    ...(replaced ? { replaces: { value: replaced.value, ref: replaced.ref } } : {}),
    loosened: replaced !== undefined && looser(use.value, replaced.value, key),
    ...(reason === undefined ? {} : { reason }),
  };
}

type Values = {
  readonly choice?: { readonly text: string } | undefined;
  readonly value?: Parameters<Lowering['interval']>[0];
};

function limitValue(
  w: Lowering,
  block: BoundBlock,
  values: Values,
  kind: LimitKind,
): PolicyLimit['value'] | undefined {
  if (values.choice) return values.choice.text;
  if (kind.dimensions.includes('ratio')) {
    return w.slope(values.value, outermost, block.uri);
  }
  const as = kind.dimensions[0];
  const ends = as && w.interval(values.value, outermost, block.uri, as);
  if (!ends) return undefined;
  return kind.range ? ends : ends.low;
}

const same = (a: PolicyLimit['value'], b: PolicyLimit['value']): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

const highEnd = (v: number | Interval): number => (typeof v === 'number' ? v : v.high);

/** Whether a limit is less safe than the one it replaces. A choice of words has its own order. */
function looser(now: PolicyLimit['value'], before: PolicyLimit['value'], key: PolicyKey): boolean {
  const kind = limits[key];
  if (typeof now === 'string' || typeof before === 'string')
    return kind.words !== undefined && now !== kind.safest;
  switch (limitKinds[key].safer) {
    case 'higher':
      return highEnd(now) < highEnd(before);
    case 'lower':
    case 'neither':
      return highEnd(now) > highEnd(before);
  }
}

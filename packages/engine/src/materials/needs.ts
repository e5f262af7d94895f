import type { ElementId, PerSupportKind, Plan, Ref, StockItem } from '@cribwright/model';
import { byKind, supportsOf, timberCount } from '@cribwright/model';
import { orderGraph, putIn } from '../order/order-graph.js';

/** So many of one thing, as a cache would list it. */
export interface Need {
  readonly kind: StockItem['kind'];
  readonly item: string;
  /** Of timber, m. */
  readonly length?: number;
  readonly count: number;
  /** The support that needs it. */
  readonly by: ElementId;
  readonly ref: Ref;
}

const needs: PerSupportKind<readonly Need[]> = {
  crib: (c) => [
    {
      kind: 'timber',
      item: c.timber.name,
      length: c.timber.length,
      count: timberCount(c),
      by: c.id,
      ref: c.ref,
    },
    ...(c.wedges === undefined || c.wedges.pairs === 0
      ? []
      : [{ kind: 'wedge pair' as const, item: 'wedge pairs', count: c.wedges.pairs, by: c.id, ref: c.ref }]),
  ],
  'step chock': (s) => [
    { kind: 'step chock', item: s.typeName ?? 'step chock', count: 1, by: s.id, ref: s.ref },
  ],
  strut: (s) => [
    s.gear.kind === 'rated strut'
      ? { kind: 'strut', item: s.gear.name, count: 1, by: s.id, ref: s.ref }
      : {
          kind: 'timber',
          item: s.gear.timber.name,
          length: s.gear.timber.length,
          count: s.gear.plies,
          by: s.id,
          ref: s.ref,
        },
  ],
  tie: (t) => [
    {
      kind: t.gear.kind === 'strap' ? 'strap' : 'chain',
      item: t.gear.name,
      count: 1,
      by: t.id,
      ref: t.ref,
    },
  ],
  // A pair, one each side of a tire, keeps it both ways.
  chock: (c) => [
    { kind: 'chock', item: 'wheel chocks', count: c.ways === 'both' ? 2 : 1, by: c.id, ref: c.ref },
  ],
  pad: (p) => [
    { kind: 'pad', item: 'pads', length: Math.max(p.length, p.width), count: 1, by: p.id, ref: p.ref },
  ],
};

/** Everything that the plan's supports are made of. Step chocks and chocks count as pieces. */
export const needsOf = (plan: Plan): readonly Need[] =>
  supportsOf(plan).flatMap((support) => byKind(support, needs));

/**
 * What is in use at the busiest moment. Without steps that take things away again, that is everything; a support
 * that a step removes gives its pieces back to the steps after it.
 */
export function inUse(plan: Plan): readonly (readonly Need[])[] {
  const all = needsOf(plan);
  const sequence = orderGraph(plan).sequence;
  if (!sequence.some((s) => s.action === 'remove')) return [all];
  const placed = new Set(sequence.flatMap(putIn));
  let standing = new Set(all.map((n) => n.by).filter((id) => !placed.has(id)));
  const moments = sequence.map((step) => {
    const next = new Set([...standing, ...putIn(step)]);
    if (step.action === 'remove') for (const id of step.targets) next.delete(id);
    standing = next;
    return all.filter((n) => next.has(n.by));
  });
  return moments;
}

import { message, name, type Phrase, quantity, term } from '@cribwright/messages';
import type { Plan, StockItem } from '@cribwright/model';
import { computed, exactly, given, measured } from '@cribwright/model';
import { count } from '@cribwright/model/internal';
import { inch } from '@cribwright/units';
import type { MaterialsResult } from '../analysis/analysis.js';
import { inUse, type Need } from './needs.js';
import { pieceName } from './piece-name.js';

type Row = MaterialsResult['rows'][number];

/** Pieces that stand for each other: the same kind and name; timber and pads of the same length to half an inch. */
const sameThing = (need: Need, stock: StockItem): boolean => {
  if (need.kind !== stock.kind) return false;
  const named = need.kind === 'wedge pair' || need.kind === 'chock' || need.kind === 'pad';
  if (!named && need.item !== stock.item) return false;
  if (need.kind === 'pad') return (stock.length ?? 0) >= (need.length ?? 0) - inch / 2;
  return need.length === undefined || stock.length === undefined
    ? need.length === stock.length || need.kind !== 'timber'
    : Math.abs(need.length - stock.length) <= inch / 2;
};

/**
 * What a unit carries of one thing. A thing listed twice counts once, at the lesser number: nobody knows which line
 * is right, and the other rule says so.
 */
const carriedBy = (unit: Plan['units'][number], need: Need): number => {
  const lines = unit.carries.filter((s) => sameThing(need, s));
  const byLine = new Map<string, number>();
  for (const line of lines) {
    const key = `${line.item} ${line.length ?? ''}`;
    byLine.set(key, Math.min(byLine.get(key) ?? Number.POSITIVE_INFINITY, line.count));
  }
  return [...byLine.values()].reduce((sum, n) => sum + n, 0);
};

const title = (need: Need): Phrase =>
  need.length === undefined || need.kind === 'pad'
    ? pieceName(need)
    : message('figure.item-long', {
        item: name(need.item),
        length: { ...quantity('length', need.length, 'nearest'), stated: true },
      });

const keyOf = (need: Need): string => `${need.kind}|${need.item}|${need.length?.toFixed(4) ?? ''}`;

/** What the plan needs at its busiest, beside what the units that respond carry. */
export function materialsOf(plan: Plan): MaterialsResult {
  const most = new Map<string, { readonly need: Need; count: number }>();
  for (const moment of inUse(plan)) {
    const sums = new Map<string, { need: Need; count: number }>();
    for (const need of moment) {
      const key = keyOf(need);
      const before = sums.get(key);
      sums.set(key, { need: before?.need ?? need, count: (before?.count ?? 0) + need.count });
    }
    for (const [key, sum] of sums) if (sum.count > (most.get(key)?.count ?? 0)) most.set(key, sum);
  }
  return { rows: [...most.values()].map(({ need, count }) => row(need, count, plan)) };
}

function row(need: Need, pieces: number, plan: Plan): Row {
  const needed = measured(
    count('needed', term('figure.needed-at-the-busiest'), 'up'),
    exactly(pieces),
    term('figure.pieces-of-every-support-that-stands-at'),
  );
  const carried =
    plan.units.length === 0
      ? given(count('carried', term('figure.carried'), 'down'), undefined, { kind: 'unknown' })
      : computed(
          count('carried', term('figure.carried'), 'down'),
          exactly(plan.units.reduce((sum, u) => sum + carriedBy(u, need), 0)),
          plan.units.map((_, i) => `{u${i}}`).join(' + '),
          Object.fromEntries(
            plan.units.map((u, i) => [
              `u${i}`,
              given(count('unit', name(u.name), 'down', { ref: u.ref }), exactly(carriedBy(u, need)), {
                kind: 'stated',
              }),
            ]),
          ),
        );
  const have = carried.value?.low;
  return {
    item: title(need),
    piece: need.item,
    kind: need.kind,
    needed,
    carried,
    short: computed(
      count('short', term('figure.short-by'), 'up'),
      have === undefined ? undefined : exactly(Math.max(0, pieces - have)),
      'max(0, {needed} − {carried})',
      { needed, carried },
    ),
    ref: need.ref,
  };
}

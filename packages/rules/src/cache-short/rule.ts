import type { MaterialsResult, Workings } from '@cribwright/engine';
import { pieceName } from '@cribwright/engine/internal';
import { list, message, type Phrase, shown, term } from '@cribwright/messages';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** What else of the kind the units carry: it may do, after another look at heights and loads. */
const standIns = (kind: string, item: string, w: Workings): readonly Phrase[] => [
  ...new Map(
    w.plan.units
      .flatMap((u) => u.carries)
      .filter((s) => s.kind === kind && s.count > 0 && !item.startsWith(s.item))
      .map((s) => [s.item, pieceName(s)] as const),
  ).values(),
];

function short(row: MaterialsResult['rows'][number], w: Workings): RuleFinding | undefined {
  if ((row.short.value?.high ?? 0) <= 0) return undefined;
  const others = standIns(row.kind, row.piece, w);
  return {
    subject: row.ref ?? w.plan.ref,
    at: row.ref ?? w.plan.ref,
    message: message('cache-short.short', {
      needed: shown(row.needed),
      item: row.item,
      carried: shown(row.carried),
      short: shown(row.short),
      advice:
        others.length > 0
          ? message('cache-short.stand-in', { items: list(others, 'plain') })
          : term('cache-short.call-more'),
    }),
    figures: [row.needed, row.carried, row.short],
  };
}

export const rule: Rule = {
  id: 'cache-short',
  title: term('cache-short.title'),
  family: 'stock',
  severity: 'warning',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('cache-short.protects'),
  sources: [practice],
  compares: ['needed', 'carried'],
  check: (w) => w.materials().rows.flatMap((r) => short(r, w) ?? []),
};

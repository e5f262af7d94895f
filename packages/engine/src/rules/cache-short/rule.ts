import { list, name, shown } from '@cribwright/messages';
import type { MaterialsResult } from '../../analysis/analysis.js';
import { messages } from '../../finding/message.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  short: '{needed} {item} are needed at the busiest, and {carried} are carried: {short} short. {advice}',
  'stand-in': 'Could stand in: {items}. Work the plan out again with them.',
  'call-more': 'Call for another unit, or build with less.',
} as const;
const say = messages('cache-short', words);

/** What else of the kind the units carry: it may do, after another look at heights and loads. */
const standIns = (kind: string, item: string, w: Workings): readonly string[] => [
  ...new Set(
    w.plan.units
      .flatMap((u) => u.carries)
      .filter((s) => s.kind === kind && s.count > 0 && !item.startsWith(s.item))
      .map((s) => s.item),
  ),
];

function short(row: MaterialsResult['rows'][number], w: Workings): RuleFinding | undefined {
  if ((row.short.value?.high ?? 0) <= 0) return undefined;
  const others = standIns(row.kind, row.piece, w);
  return {
    subject: row.ref ?? w.plan.ref,
    at: row.ref ?? w.plan.ref,
    message: say('short', {
      needed: shown(row.needed),
      item: row.item,
      carried: shown(row.carried),
      short: shown(row.short),
      advice:
        others.length > 0
          ? say('stand-in', { items: list(others.map(name), 'plain') })
          : say('call-more', {}),
    }),
    figures: [row.needed, row.carried, row.short],
  };
}

export const rule: Rule = {
  id: 'cache-short',
  title: 'More needed than the units carry',
  family: 'stock',
  severity: 'warning',
  protects: 'A crib that is four timbers short is built lower, or out of what lies about.',
  sources: [practice],
  compares: ['needed', 'carried'],
  words,
  check: (w) => w.materials().rows.flatMap((r) => short(r, w) ?? []),
};

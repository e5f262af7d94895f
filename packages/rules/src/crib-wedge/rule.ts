import type { Workings } from '@cribwright/engine';
import type { CribWorking } from '@cribwright/engine/internal';
import { message, name, count as numberOf, shownBeside, term } from '@cribwright/messages';
import { exactly, given } from '@cribwright/model';
import { count } from '@cribwright/model/internal';
import { exceeds } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function untight(c: CribWorking, w: Workings): readonly RuleFinding[] {
  const { crib, loaded } = c;
  if (loaded === 0) return [];
  const pairs = crib.wedges?.pairs ?? 0;
  const at = { element: crib.id, property: 'wedges' };
  const subject = { element: crib.id };
  const fix = {
    title: message('crib-wedge.fix-pairs', { pairs: numberOf(loaded) }),
    edits: [{ kind: 'set' as const, at, text: `${loaded} pairs` }],
    safe: false,
  };
  const figure = given(count('pairs', term('figure.pairs-of-wedges'), 'down', { ref: at }), exactly(pairs), {
    kind: 'stated',
  });
  const shared = { crib: name(crib.name), loaded: numberOf(loaded) };
  const few: readonly RuleFinding[] =
    pairs >= loaded
      ? []
      : [
          {
            subject,
            at: crib.wedges === undefined ? subject : at,
            message:
              pairs === 0
                ? message('crib-wedge.none', shared)
                : message('crib-wedge.few', { ...shared, pairs: numberOf(pairs) }),
            figures: [figure],
            fixes: [fix],
          },
        ];
  const most = w.limit('wedge travel');
  const limit = most.value === undefined ? most : { ...most, value: exactly(most.value.high) };
  const beside = shownBeside(c.closes, limit);
  return exceeds(c.closes.value?.high ?? 0, limit.value?.high ?? Number.POSITIVE_INFINITY)
    ? [
        ...few,
        {
          subject,
          at,
          message: message('crib-wedge.travel', {
            crib: name(crib.name),
            travel: beside.demand,
            most: beside.limit,
          }),
          figures: [c.closes, limit],
        },
      ]
    : few;
}

export const rule: Rule = {
  id: 'crib-wedge',
  title: term('crib-wedge.title'),
  family: 'timber and cribs',
  severity: 'warning',
  judges: 'contact',
  protects: term('crib-wedge.protects'),
  sources: [practice],
  compares: ['pairs', 'closes', 'wedge travel'],
  check: (w) => w.cribs().flatMap((c) => untight(c, w)),
};

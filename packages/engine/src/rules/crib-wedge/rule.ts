import { shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import type { CribWorking } from '../../crib/crib-working.js';
import { given } from '../../figure/compute.js';
import { count } from '../../figure/units-of.js';
import { messages } from '../../finding/message.js';
import { exactly } from '../../model/interval.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  few: 'Crib {crib} has {pairs} for {loaded} loaded contacts. A contact without wedges may not be tight: use {loaded} pairs.',
  none: 'Crib {crib} has no wedges. Nothing makes its {loaded} loaded contacts tight: use {loaded} pairs.',
  travel:
    'Crib {crib}: its wedges are to close {travel}. One pair closes at most {most}; more, and they stand on their tips. Use shims or another course.',
  'fix-pairs': 'Use {pairs} pairs of wedges',
} as const;
const say = messages('crib-wedge', words);

function untight(c: CribWorking, w: Workings): readonly RuleFinding[] {
  const { crib, loaded } = c;
  if (loaded === 0) return [];
  const pairs = crib.wedges?.pairs ?? 0;
  const at = { element: crib.id, property: 'wedges' };
  const subject = { element: crib.id };
  const fix = {
    title: say('fix-pairs', { pairs: `${loaded}` }),
    edits: [{ kind: 'set' as const, at, text: `${loaded} pairs` }],
    safe: false,
  };
  const figure = given(count('pairs', term('figure.pairs-of-wedges'), 'down', { ref: at }), exactly(pairs), {
    kind: 'stated',
  });
  const shared = { crib: crib.name, loaded: `${loaded}` };
  const few: readonly RuleFinding[] =
    pairs >= loaded
      ? []
      : [
          {
            subject,
            at: crib.wedges === undefined ? subject : at,
            message:
              pairs === 0
                ? say('none', shared)
                : say('few', { ...shared, pairs: `${pairs} ${pairs === 1 ? 'pair' : 'pairs'} of wedges` }),
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
          message: say('travel', { crib: crib.name, travel: beside.demand, most: beside.limit }),
          figures: [c.closes, limit],
        },
      ]
    : few;
}

export const rule: Rule = {
  id: 'crib-wedge',
  title: 'Contact without wedges, or wedges stretched too far',
  family: 'timber and cribs',
  severity: 'warning',
  protects: 'A contact that is not tight carries nothing until the load has moved.',
  sources: [practice],
  compares: ['pairs', 'closes', 'wedge travel'],
  words,
  check: (w) => w.cribs().flatMap((c) => untight(c, w)),
};

import { calculation, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { messages } from '../../finding/message.js';
import type { StrutWorking } from '../../strut/strut-working.js';
import type { Workings } from '../../workings/workings.js';
import { fromMemory, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'too-slender':
    'Strut {strut} is a {post} of {length}: slenderness {slenderness} ({sum}). A post may have {limit}. Use a thicker post, or a shorter one of at most {most}.',
  'limit-set-here': 'The limit is set here: {limit}.',
} as const;
const say = messages('post-slender', words);

function tooSlender(s: StrutWorking, w: Workings): readonly RuleFinding[] {
  const limit = w.limit('post slenderness');
  const may = limit.value?.low;
  const { slenderness, strut } = s;
  const is = slenderness?.value?.high;
  if (slenderness === undefined || is === undefined || may === undefined || !exceeds(is, may)) return [];
  const depth = slenderness.inputs.find((f) => f.key === 'leastDepth');
  const beside = shownBeside(slenderness, limit);
  return [
    {
      subject: { element: strut.id },
      at: strut.foot.ref,
      message: say('too-slender', {
        strut: strut.name,
        post: strut.gear.name,
        length: shown(s.length),
        slenderness: beside.demand,
        sum: calculation(slenderness),
        limit: beside.limit,
        most:
          depth?.value === undefined
            ? 'a known length'
            : shown({
                ...depth,
                value: {
                  low: depth.value.low * may,
                  high: depth.value.low * may,
                },
              }),
      }),
      figures: [slenderness, limit, s.length],
      related:
        limit.ref === undefined
          ? []
          : [
              {
                at: limit.ref,
                message: say('limit-set-here', { limit: shown(limit) }),
              },
            ],
      ...(slenderness.value !== undefined && slenderness.value.low !== slenderness.value.high
        ? { governs: term('figure.the-longest-it-may-be') }
        : {}),
    },
  ];
}

export const rule: Rule = {
  id: 'post-slender',
  title: 'Post too slender',
  family: 'struts and ties',
  severity: 'danger',
  protects: 'A long thin post bows sideways and snaps long before the wood is crushed.',
  sources: [fromMemory('NDS 2018, 3.7.1.4: slenderness at most 50 in service, 75 while erecting')],
  compares: ['slenderness', 'post slenderness'],
  words,
  check: (w: Workings) => w.struts().flatMap((s) => tooSlender(s, w)),
};

import type { Workings } from '@cribwright/engine';
import type { StrutWorking } from '@cribwright/engine/internal';
import { calculation, message, name, shown, shownAs, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { fromMemory, type Rule, type RuleFinding } from '../definition/rule.js';

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
      message: message('post-slender.too-slender', {
        strut: name(strut.name),
        post: name(strut.gear.name),
        length: shown(s.length),
        slenderness: beside.demand,
        sum: calculation(slenderness),
        limit: beside.limit,
        advice:
          depth?.value === undefined
            ? term('post-slender.use-thicker')
            : message('post-slender.use-shorter', { most: shownAs(depth, depth.value.low * may) }),
      }),
      figures: [slenderness, limit, s.length],
      related:
        limit.ref === undefined
          ? []
          : [
              {
                at: limit.ref,
                message: message('post-slender.limit-set-here', { limit: shown(limit) }),
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
  title: term('post-slender.title'),
  family: 'struts and ties',
  severity: 'danger',
  judges: 'element',
  protects: term('post-slender.protects'),
  sources: [fromMemory('NDS 2018, 3.7.1.4: slenderness at most 50 in service, 75 while erecting')],
  compares: ['slenderness', 'post slenderness'],
  check: (w: Workings) => w.struts().flatMap((s) => tooSlender(s, w)),
};

import type { Workings } from '@cribwright/engine';
import type { CribWorking } from '@cribwright/engine/internal';
import { fitAdvice, fitOf, fixTo, packingFigure, shimsFigure } from '@cribwright/engine/internal';
import type { Figure } from '@cribwright/messages';
import { calculation, message, name, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** More shims, or more packing in all, than the policy allows under the load. */
function overpacked(c: CribWorking, w: Workings): RuleFinding | undefined {
  const { crib } = c;
  const shims = shimsFigure(c);
  const most = w.limit('most shims');
  const packing = packingFigure(c);
  const mostPacking = w.limit('most packing');
  const over = (value: Figure, limit: Figure) =>
    exceeds(value.value?.high ?? 0, limit.value?.low ?? Number.POSITIVE_INFINITY);
  const thick = over(shims, most);
  if (!thick && !over(packing, mostPacking)) return undefined;
  const [value, limit] = thick ? [shims, most] : [packing, mostPacking];
  const fit = fitOf(c, w.plan);
  const beside = shownBeside(value, limit);
  const holes = { crib: name(crib.name), limit: beside.limit, advice: fitAdvice(fit, w.plan) };
  const subject = { element: crib.id };
  return {
    subject,
    at: { ...subject, property: crib.shims > 0 ? 'shims' : 'wedges' },
    message: thick
      ? message('crib-packing.shims', { ...holes, shims: beside.demand })
      : message('crib-packing.packing', { ...holes, packing: beside.demand, sum: calculation(packing) }),
    figures: [value, limit],
    related: [
      {
        at: w.plan.policy.limits[thick ? 'most shims' : 'most packing'].ref,
        message: message('crib-packing.limit-set-here', { limit: shown(limit) }),
      },
    ],
    fixes: fit === undefined ? [] : [fixTo(fit, c, w.plan)],
  };
}

export const rule: Rule = {
  id: 'crib-packing',
  title: term('crib-packing.title'),
  family: 'timber and cribs',
  severity: 'danger',
  judges: 'plan',
  protects: term('crib-packing.protects'),
  sources: [practice],
  compares: ['shims', 'most shims', 'packing', 'most packing'],
  check: (w) => w.cribs().flatMap((c) => overpacked(c, w) ?? []),
};

import type { Workings } from '@cribwright/engine';
import { orderGraph, stepsPutting } from '@cribwright/engine/internal';
import { message, name, term } from '@cribwright/messages';
import type { Crib } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** Built outside and slid in: the plan says so of the crib, or a step slides it. */
const isSlidIn = (crib: Crib, { plan }: Workings): boolean =>
  crib.slidIn || plan.steps.some((s) => s.action === 'slide' && s.targets.includes(crib.id));

function unchecked(crib: Crib, w: Workings): RuleFinding | undefined {
  const { plan } = w;
  const graph = orderGraph(plan);
  const putting = stepsPutting(plan, crib.id).at(-1);
  const checked = plan.steps.some(
    (s) =>
      s.action === 'check' &&
      s.targets.includes(crib.id) &&
      (putting === undefined || graph.before(putting.id, s.id)),
  );
  if (checked) return undefined;
  return {
    subject: { element: crib.id },
    at: crib.slidIn ? { element: crib.id, property: 'slid in' } : { element: crib.id },
    message: message('slid-in-unchecked.unchecked', { crib: name(crib.name) }),
  };
}

export const rule: Rule = {
  id: 'slid-in-unchecked',
  title: term('slid-in-unchecked.title'),
  family: 'order and crew',
  severity: 'warning',
  judges: 'plan',
  protects: term('slid-in-unchecked.protects'),
  sources: [practice],
  compares: [],
  check: (w) => w.plan.cribs.filter((crib) => isSlidIn(crib, w)).flatMap((crib) => unchecked(crib, w) ?? []),
};

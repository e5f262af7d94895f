import type { Workings } from '@cribwright/engine';
import { holds, type TippingEdge, tippingEdge } from '@cribwright/engine/internal';
import { calculation, message, shown, shownBeside, term } from '@cribwright/messages';
import { exceeds } from '@cribwright/units';
import { practice, published, type Rule, type RuleFinding } from '../definition/rule.js';

function judge(w: Workings, t: TippingEdge): RuleFinding | undefined {
  const limit = w.limit('push margin');
  const subject = { element: t.body.vehicle };
  const may = limit.value?.high;
  if (t.share.value === undefined)
    return {
      subject,
      at: subject,
      severity: 'warning',
      couldNotRun: true,
      message: message('tipping.unknown', { vehicle: t.body.name }),
      figures: [t.share],
    };
  if (may === undefined || !exceeds(may, t.share.value.low)) return undefined;
  const beside = shownBeside(t.share, limit, 'least');
  return {
    subject,
    at: subject,
    message: message('tipping.tips', {
      vehicle: t.body.name,
      toward: t.toward,
      share: beside.demand,
      sum: calculation(t.share),
      limit: beside.limit,
    }),
    figures: [t.share, t.edge, t.height, limit],
    related:
      limit.ref === undefined
        ? []
        : [{ at: limit.ref, message: message('tipping.set-here', { limit: shown(limit) }) }],
    ...(t.share.governs === undefined ? {} : { governs: t.share.governs }),
  };
}

/** Whether a strap, a chain or a wire rope of the finished plan ends at a vehicle or at the head of its strut. */
const isTied = ({ plan, resting }: Workings, vehicle: string): boolean =>
  plan.ties.some(
    (tie) =>
      resting().stages.at(-1)?.standing.includes(tie.id) === true &&
      [tie.from, tie.to].some(
        (end) =>
          (end.kind === 'vehicle part' && end.vehicle === vehicle) ||
          (end.kind === 'strut head' &&
            plan.struts.find((s) => s.id === end.strut)?.head.vehicle === vehicle),
      ),
  );

/** Vehicles that stand free. Where struts or ties hold one, the push on all sides is the check (push-margin). */
export const rule: Rule = {
  id: 'tipping',
  title: term('tipping.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  protects: term('tipping.protects'),
  sources: [
    practice,
    published('Baker & Haynes, Engineering Statics', 'chapter 9, slipping or tipping'),
    published('NHTSA rollover rulemaking', 'chapter V: half the track over the height of the center'),
  ],
  compares: ['edge ÷ center height', 'push margin'],
  check: (w) =>
    w.resting().parts.flatMap((part) => {
      const last = part.stages.at(-1)?.asBuilt;
      if (last === undefined || !holds(last)) return [];
      const there = part.component.points.filter((_, i) => last.there[i] === true);
      return part.component.bodies.flatMap((body) => {
        const own = there.filter((p) => p.upper === body.id);
        if (body.id !== body.vehicle || own.some((p) => p.kind === 'strut') || isTied(w, body.vehicle))
          return [];
        const edge = tippingEdge(body, own);
        const found = edge === undefined ? undefined : judge(w, edge);
        return found === undefined ? [] : [found];
      });
    }),
};

import type { Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import type { StrutWorking } from '@cribwright/engine/internal';
import { footFriction, holdsFoot, strapFixes, tiesAtFoot } from '@cribwright/engine/internal';
import { calculation, message, name, shown, shownBeside, term } from '@cribwright/messages';
import { computed } from '@cribwright/model';
import { each, ratio } from '@cribwright/model/internal';
import { published, type Rule, type RuleFinding } from '../definition/rule.js';

function slides(s: StrutWorking, w: Workings): RuleFinding | undefined {
  const { strut } = s;
  const friction = footFriction(strut, w.plan);
  const needed = computed(
    ratio('frictionNeeded', term('figure.friction-needed'), 'up'),
    each(s.angle.value, (t) => 1 / Math.tan(t)),
    '1 ÷ tan({angle})',
    { angle: s.angle },
  );
  // Friction alone holds a steep strut: cos θ ≤ μ sin θ.
  if (needed.value === undefined || friction.value === undefined) return undefined;
  if (needed.value.high <= friction.value.low + 1e-12) return undefined;
  const subject = { element: strut.id };
  const ties = tiesAtFoot(strut.id, w.plan.ties);
  const first = ties[0];
  const figures = [needed, friction, s.angle];
  if (first === undefined) {
    const beside = shownBeside(needed, friction);
    return {
      subject,
      at: { element: strut.id, property: 'base' },
      message: message('strut-slip.slides', {
        strut: name(strut.name),
        angle: shown(s.angle),
        needed: beside.demand,
        friction: beside.limit,
        sum: calculation(needed),
      }),
      figures,
      fixes: strapFixes(strut, w),
    };
  }
  if (ties.some((t) => holdsFoot(t, strut, w.plan))) return undefined;
  return {
    subject,
    at: { element: first.id },
    message: message('strut-slip.tied-aside', {
      strut: name(strut.name),
      tie: elementMessage(w.plan, first.id),
    }),
    figures,
    fixes: strapFixes(strut, w),
  };
}

export const rule: Rule = {
  id: 'strut-slip',
  title: term('strut-slip.title'),
  family: 'struts and ties',
  severity: 'danger',
  judges: 'plan',
  protects: term('strut-slip.protects'),
  sources: [published('OpenStax University Physics, volume 1', 'section 6.2, Table 6.1')],
  compares: ['frictionNeeded', 'footFriction'],
  check: (w) => w.struts().flatMap((s) => slides(s, w) ?? []),
};

import type { Workings } from '@cribwright/engine';
import type { StrutWorking } from '@cribwright/engine/internal';
import { leastFootFriction, opposite, strapFixes, tiesAtFoot } from '@cribwright/engine/internal';
import { message, name, shown, term } from '@cribwright/messages';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

function untied(s: StrutWorking, w: Workings): RuleFinding | undefined {
  const { strut } = s;
  if (tiesAtFoot(strut.id, w.plan.ties).length > 0) return undefined;
  const other = opposite(strut, w.plan, w.vehicles);
  const across =
    other !== undefined
      ? message('tie-missing.tie-across', { other: name(other.name) })
      : term('tie-missing.tie-somewhere');
  return {
    subject: { element: strut.id },
    at: { element: strut.id },
    ...(frictionHolds(s, w) ? { severity: 'warning' as const } : {}),
    message: message('tie-missing.untied', {
      strut: name(strut.name),
      angle: shown(s.angle),
      advice: across,
    }),
    figures: [s.angle],
    fixes: strapFixes(strut, w),
  };
}

/** A steep strut stays by friction alone: cos θ ≤ μ sin θ. Then a tie is good practice, and its lack no danger yet. */
function frictionHolds({ angle, strut }: StrutWorking, w: Workings): boolean {
  const flattest = angle.value?.low;
  if (flattest === undefined) return false;
  return Math.cos(flattest) <= leastFootFriction(strut, w.plan) * Math.sin(flattest);
}

export const rule: Rule = {
  id: 'tie-missing',
  title: term('tie-missing.title'),
  family: 'struts and ties',
  severity: 'danger',
  judges: 'plan',
  protects: term('tie-missing.protects'),
  sources: [practice],
  compares: ['angle'],
  check: (w) => w.struts().flatMap((s) => untied(s, w) ?? []),
};

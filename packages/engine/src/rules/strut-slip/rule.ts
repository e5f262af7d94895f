import { calculation, shown, shownBeside, term } from '@cribwright/messages';
import { computed } from '../../figure/compute.js';
import { each } from '../../figure/interval-math.js';
import { ratio } from '../../figure/units-of.js';
import { messages } from '../../finding/message.js';
import { footFriction } from '../../strut/foot-friction.js';
import { tiesAtFoot } from '../../strut/pairs.js';
import type { StrutWorking } from '../../strut/strut-working.js';
import { holdsFoot } from '../../strut/tie-working.js';
import type { Workings } from '../../workings/workings.js';
import { published, type Rule, type RuleFinding } from '../rule.js';

const words = {
  slides:
    'Strut {strut}: its foot slides under any load. At {angle} it takes friction of {needed} ({sum}), and {friction} is counted on. Untied, the strut adds nothing. Tie its foot.',
  'tied-aside':
    'Strut {strut}: {tie} pulls across the way in which its foot would slide, so it does not hold it. Run it back toward the vehicle, to the foot across.',
} as const;
const say = messages('strut-slip', words);

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
      at: { element: strut.id, property: 'foot' },
      message: say('slides', {
        strut: strut.name,
        angle: shown(s.angle),
        needed: beside.demand,
        friction: beside.limit,
        sum: calculation(needed),
      }),
      figures,
    };
  }
  if (ties.some((t) => holdsFoot(t, strut, w.plan))) return undefined;
  return {
    subject,
    at: { element: first.id },
    message: say('tied-aside', { strut: strut.name, tie: `${first.gear.kind} ${first.name}` }),
    figures,
  };
}

export const rule: Rule = {
  id: 'strut-slip',
  title: 'Strut foot that slides',
  family: 'struts and ties',
  severity: 'danger',
  protects: 'A foot that slides takes the strut away the moment the load comes on.',
  sources: [published('OpenStax University Physics, volume 1', 'section 6.2, Table 6.1')],
  compares: ['frictionNeeded', 'footFriction'],
  words,
  check: (w) => w.struts().flatMap((s) => slides(s, w) ?? []),
};

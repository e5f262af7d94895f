import { shown } from '@cribwright/messages';
import type { Fix } from '../../finding/finding.js';
import { messages } from '../../finding/message.js';
import type { Strut } from '../../model/support.js';
import { leastFootFriction } from '../../strut/foot-friction.js';
import { opposite, tiesAtFoot } from '../../strut/pairs.js';
import type { StrutWorking } from '../../strut/strut-working.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  untied: 'Strut {strut}: nothing ties its foot. At {angle} the load pushes the foot out. {advice}',
  'tie-across': 'Run a strap from its foot to the foot of {other}.',
  'tie-somewhere': 'Run a strap from its foot to the foot of a strut on the other side, or to an anchor.',
  'fix-tie': 'Strap the feet of {strut} and {other} together',
} as const;
const say = messages('tie-missing', words);

function untied(s: StrutWorking, w: Workings): RuleFinding | undefined {
  const { strut } = s;
  if (tiesAtFoot(strut.id, w.plan.ties).length > 0) return undefined;
  const other = opposite(strut, w.plan, w.vehicles);
  const across = other !== undefined ? say('tie-across', { other: other.name }) : say('tie-somewhere', {});
  return {
    subject: { element: strut.id },
    at: { element: strut.id },
    ...(frictionHolds(s, w) ? { severity: 'warning' as const } : {}),
    message: say('untied', {
      strut: strut.name,
      angle: shown(s.angle),
      advice: across,
    }),
    figures: [s.angle],
    fixes: other === undefined ? [] : [tieFix(strut, other, w)],
  };
}

/** A steep strut stays by friction alone: cos θ ≤ μ sin θ. Then a tie is good practice, and its lack no danger yet. */
function frictionHolds({ angle, strut }: StrutWorking, w: Workings): boolean {
  const flattest = angle.value?.low;
  if (flattest === undefined) return false;
  return Math.cos(flattest) <= leastFootFriction(strut, w.plan) * Math.sin(flattest);
}

function tieFix(strut: Strut, other: Strut, w: Workings): Fix {
  const names = new Set(w.plan.ties.map((t) => t.name));
  let number = w.plan.ties.length + 1;
  while (names.has(`T${number}`)) number++;
  const gear = w.plan.ties[0]?.gear.name ?? 'RatchetStrap2in';
  return {
    title: say('fix-tie', { strut: strut.name, other: other.name }),
    edits: [
      {
        kind: 'insert',
        into: w.plan.ref,
        text: `strap T${number} : ${gear} { from ${strut.name} foot to ${other.name} foot }`,
      },
    ],
    safe: false,
  };
}

export const rule: Rule = {
  id: 'tie-missing',
  title: 'Strut foot not tied',
  family: 'struts and ties',
  severity: 'danger',
  protects: 'A leaning strut pushes its own foot out; untied, it slides away and the load comes down.',
  sources: [practice],
  compares: ['angle'],
  words,
  check: (w) => w.struts().flatMap((s) => untied(s, w) ?? []),
};

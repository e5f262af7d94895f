import { term } from '@cribwright/messages';
import { given, measured } from '../../figure/compute.js';
import { count } from '../../figure/units-of.js';
import { messages } from '../../finding/message.js';
import { exactly } from '../../model/interval.js';
import { busiest } from '../../order/timeline.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  short:
    'At one time {needed} people are at work (steps {steps}), and {have} come. Let some of these steps wait, or call for more.',
  'one-step': 'Step {steps} takes {needed} people, and {have} come. Call for more.',
  unknown: 'Nobody says how many people come. The steps take {needed} at one time.',
} as const;
const say = messages('crew-short', words);

function shortOfPeople(w: Workings): readonly RuleFinding[] {
  const { plan } = w;
  const { people, steps } = busiest(plan);
  const first = steps.find((s) => s.crew !== undefined);
  if (people === 0 || first === undefined) return [];
  const counted = [...plan.crews.map((c) => c.people), ...plan.units.flatMap((u) => u.people ?? [])];
  const needed = measured(
    count('crewPeak', term('figure.most-people-at-work-at-one-time'), 'up'),
    exactly(people),
    term('figure.crews-of-the-steps-under-way-at'),
  );
  const base = { subject: plan.ref, at: first.ref };
  if (counted.length === 0)
    return [
      { ...base, severity: 'note', message: say('unknown', { needed: `${people}` }), figures: [needed] },
    ];
  const have = counted.reduce((sum, n) => sum + n, 0);
  if (people <= have) return [];
  const holes = { needed: `${people}`, have: `${have}`, steps: steps.map((s) => s.number).join(', ') };
  const come = given(count('people', term('figure.people-who-come'), 'down'), exactly(have), {
    kind: 'stated',
  });
  return [
    {
      ...base,
      message: steps.length === 1 ? say('one-step', holes) : say('short', holes),
      figures: [needed, come],
    },
  ];
}

export const rule: Rule = {
  id: 'crew-short',
  title: 'More people at work than come',
  family: 'order and crew',
  severity: 'warning',
  protects: 'A plan for more hands than there are is built in haste, or half.',
  sources: [practice],
  compares: ['crewPeak', 'people'],
  words,
  check: shortOfPeople,
};

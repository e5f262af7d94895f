import { messages } from '../../finding/message.js';
import { holders } from '../../order/order-graph.js';
import { nameOf } from '../../workings/support-workings.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'not-held':
    'The {upper} rests on the {lower}, and nothing holds the {lower}. Put cribs or step chocks under it before the {upper} is touched.',
  'rests-here': 'Here the {upper} rests on it.',
} as const;
const say = messages('upper-on-unstable-lower', words);

const unheld = (w: Workings): readonly RuleFinding[] => {
  const lowers = [...new Set(w.plan.contacts.filter((c) => !c.coupled).map((c) => c.lower))];
  return lowers.flatMap((lower) => {
    if (holders(w.plan, lower).length > 0) return [];
    const contact = w.plan.contacts.find((c) => c.lower === lower && !c.coupled);
    if (contact === undefined) return [];
    const names = { lower: nameOf(w, lower), upper: nameOf(w, contact.upper) };
    return [
      {
        subject: { element: lower },
        at: { element: lower },
        message: say('not-held', names),
        related: [
          {
            at: contact.ref,
            message: say('rests-here', { upper: names.upper }),
          },
        ],
      },
    ];
  });
};

export const rule: Rule = {
  id: 'upper-on-unstable-lower',
  title: 'Vehicle resting on one that nothing holds',
  family: 'whole set-up',
  severity: 'danger',
  protects: 'A car on its own springs and tires rocks and sinks under the truck that rests on it.',
  sources: [practice],
  compares: [],
  words,
  check: unheld,
};

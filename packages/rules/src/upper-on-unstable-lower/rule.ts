import type { Workings } from '@cribwright/engine';
import { holders, nameOf } from '@cribwright/engine/internal';
import { message, name, term } from '@cribwright/messages';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

const unheld = (w: Workings): readonly RuleFinding[] => {
  const lowers = [...new Set(w.plan.contacts.filter((c) => !c.coupled).map((c) => c.lower))];
  return lowers.flatMap((lower) => {
    if (holders(w.plan, lower).length > 0) return [];
    const contact = w.plan.contacts.find((c) => c.lower === lower && !c.coupled);
    if (contact === undefined) return [];
    const names = { lower: name(nameOf(w, lower)), upper: name(nameOf(w, contact.upper)) };
    return [
      {
        subject: { element: lower },
        at: { element: lower },
        message: message('upper-on-unstable-lower.not-held', names),
        related: [
          {
            at: contact.ref,
            message: message('upper-on-unstable-lower.rests-here', { upper: names.upper }),
          },
        ],
      },
    ];
  });
};

export const rule: Rule = {
  id: 'upper-on-unstable-lower',
  title: term('upper-on-unstable-lower.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  protects: term('upper-on-unstable-lower.protects'),
  sources: [practice],
  compares: [],
  check: unheld,
};

import { count, list, message, name } from '@cribwright/messages';
import { nameOf } from '../../workings/support-workings.js';
import { practice, type Rule } from '../rule.js';

export const rule: Rule = {
  id: 'cases-left-out',
  title: 'Not every case was checked',
  family: 'whole set-up',
  severity: 'warning',
  protects:
    'A plan with very many ranges and supports has more cases than are calculated. A worse one may exist.',
  sources: [practice],
  compares: ['cases calculated', 'cases there are'],
  // Heavy: it runs with the pushes.
  check: (w) =>
    w.options.push === true
      ? w.standing().leftOut.map(({ vehicles, done, of }) => {
          const subject = { element: vehicles[0] ?? w.plan.id };
          const holes = {
            vehicles: list(
              vehicles.map((v) => name(nameOf(w, v))),
              'and',
            ),
            done: count(done),
            of: count(of),
          };
          return {
            subject,
            at: subject,
            message: message('cases-left-out.left-out', holes),
            couldNotRun: true,
          };
        })
      : [],
};

import { message, name } from '@cribwright/messages';
import { isUnheldNose } from '../../standing/unheld-nose.js';
import { nameOf } from '../../workings/support-workings.js';
import { practice, type Rule } from '../rule.js';

export const rule: Rule = {
  id: 'coupling-missing',
  title: 'Coupling without its other half',
  family: 'whole system',
  severity: 'danger',
  protects: 'A trailer that is not coupled rests on nothing at its kingpin.',
  sources: [practice],
  compares: ['vehicles that carry the kingpin', 'supports under the front'],
  // Heavy: it runs with the pushes.
  check: (w) =>
    w.options.push === true
      ? w
          .standing()
          .groups.filter(isUnheldNose)
          .flatMap(({ loose }) =>
            loose.map((vehicle) => ({
              subject: { element: vehicle },
              at: { element: vehicle },
              message: message('coupling-missing.not-held', { vehicle: name(nameOf(w, vehicle)) }),
              couldNotRun: true,
            })),
          )
      : [],
};

import { isUnheldNose, nameOf, unheldNoses } from '@cribwright/engine/internal';
import { message, name, term } from '@cribwright/messages';
import { practice, type Rule } from '../definition/rule.js';

export const rule: Rule = {
  id: 'coupling-missing',
  title: term('coupling-missing.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  protects: term('coupling-missing.protects'),
  sources: [practice],
  compares: ['vehicles that carry the kingpin', 'supports under the front'],
  // What can be seen at once; with the pushes, what the model in space finds besides.
  check: (w) => {
    const standing = w.options.push === true ? w.standing().groups.filter(isUnheldNose) : [];
    const vehicles = new Set([...unheldNoses(w), ...standing.flatMap(({ loose }) => loose)]);
    return [...vehicles].map((vehicle) => ({
      subject: { element: vehicle },
      at: { element: vehicle },
      message: message('coupling-missing.not-held', { vehicle: name(nameOf(w, vehicle)) }),
      couldNotRun: true,
    }));
  },
};

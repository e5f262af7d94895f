import { list } from '@cribwright/messages';
import { messages } from '../../finding/message.js';
import { everyMix } from '../../loss/components.js';
import { type Failure, failureOf, withCorner } from '../../loss/failures.js';
import { fromMemory, practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  falls: 'Nothing holds {end} of the {vehicle}{when}. Put a support under it.',
  balances:
    'The {vehicle} only balances{when}: nothing keeps it from going over. Put supports on both sides of its center of gravity.',
  unsolved:
    'How the {vehicle} rests could not be worked out. Treat it as not held: this check has not passed.',
  unknown:
    'The weight or the center of gravity of the {vehicle} is not known, so nobody can say what holds it. Give its axle loads, or its weight and center. Until then this check has not passed.',
  mixes:
    'So many weights and places of the {vehicles} are ranges that not every mix of them could be tried. A worse one than those shown may exist: this check has not passed. Weigh or measure what can be, or work out fewer vehicles at a time.',
  'as-found':
    'As found, nothing in the plan holds {end} of the {vehicle}{when}. Something else does, or it has only just not fallen: write down what holds it, and keep clear until a support is in.',
} as const;
const say = messages('unsupported-end', words);

const found = (f: Failure, message: RuleFinding['message'], severity: 'danger' | 'warning'): RuleFinding => ({
  subject: { element: f.vehicle },
  at: { element: f.vehicle },
  severity,
  message,
  ...(f.kind === 'unsolved' ? { couldNotRun: true } : {}),
  ...(f.corner === undefined ? {} : { governs: f.corner }),
});

export const rule: Rule = {
  id: 'unsupported-end',
  title: 'An end that nothing holds',
  family: 'whole set-up',
  severity: 'danger',
  protects: 'A vehicle whose supports do not reach round its center of gravity falls toward the open side.',
  sources: [
    practice,
    fromMemory('statics: a body rests where its center of gravity stands over its supports'),
  ],
  compares: ['center of gravity', 'place of the supports'],
  words,
  check: (w) => {
    const { parts, unknown } = w.resting();
    const blind = unknown.map(
      (v): RuleFinding => ({
        subject: { element: v.id },
        at: { element: v.id },
        severity: 'warning',
        couldNotRun: true,
        message: say('unknown', { vehicle: v.name }),
      }),
    );
    const untried = parts.flatMap((part): readonly RuleFinding[] => {
      const { bodies } = part.component;
      const [first] = bodies;
      if (first === undefined || everyMix(bodies)) return [];
      const subject = { element: first.vehicle };
      const vehicles = list(
        bodies.map((b) => b.name),
        'plain',
      );
      return [
        { subject, at: subject, severity: 'warning', couldNotRun: true, message: say('mixes', { vehicles }) },
      ];
    });
    const ends = parts.flatMap((part): readonly RuleFinding[] => {
      const [first, last] = [part.stages[0]?.asBuilt, part.stages.at(-1)?.asBuilt];
      const failure = last === undefined ? undefined : failureOf(w, part, last);
      if (failure !== undefined) {
        const { name: vehicle, end } = failure;
        const when = withCorner(failure.corner);
        const message =
          failure.kind === 'falls'
            ? say('falls', { vehicle, end, when })
            : failure.kind === 'balances'
              ? say('balances', { vehicle, when })
              : say('unsolved', { vehicle });
        return [found(failure, message, 'danger')];
      }
      const before = first === undefined ? undefined : failureOf(w, part, first);
      if (before === undefined || before.kind === 'unsolved') return [];
      const { name: vehicle, end } = before;
      return [found(before, say('as-found', { vehicle, end, when: withCorner(before.corner) }), 'warning')];
    });
    return [...blind, ...untried, ...ends];
  },
};

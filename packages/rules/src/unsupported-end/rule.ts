import { everyMix, type Failure, failureOf, withCorner } from '@cribwright/engine/internal';
import { list, type Message, message, name, term } from '@cribwright/messages';
import { fromMemory, practice, type Rule, type RuleFinding } from '../definition/rule.js';

const found = (f: Failure, what: Message, severity: 'danger' | 'warning'): RuleFinding => ({
  subject: { element: f.vehicle },
  at: { element: f.vehicle },
  severity,
  message: what,
  ...(f.kind === 'unsolved' ? { couldNotRun: true } : {}),
  ...(f.corner === undefined ? {} : { governs: f.corner }),
});

export const rule: Rule = {
  id: 'unsupported-end',
  title: term('unsupported-end.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  protects: term('unsupported-end.protects'),
  sources: [
    practice,
    fromMemory('statics: a body rests where its center of gravity stands over its supports'),
  ],
  compares: ['center of gravity', 'place of the supports'],
  check: (w) => {
    const { parts, unknown } = w.resting();
    const blind = unknown.map(
      (v): RuleFinding => ({
        subject: { element: v.id },
        at: { element: v.id },
        severity: 'warning',
        couldNotRun: true,
        message: message('unsupported-end.unknown', { vehicle: name(v.name) }),
      }),
    );
    const untried = parts.flatMap((part): readonly RuleFinding[] => {
      const { bodies } = part.component;
      const [first] = bodies;
      if (first === undefined || everyMix(bodies)) return [];
      const subject = { element: first.vehicle };
      const vehicles = list(bodies.map((b) => b.name));
      return [
        {
          subject,
          at: subject,
          severity: 'warning',
          couldNotRun: true,
          message: message('unsupported-end.mixes', { vehicles }),
        },
      ];
    });
    const ends = parts.flatMap((part): readonly RuleFinding[] => {
      const [first, last] = [part.stages[0]?.asBuilt, part.stages.at(-1)?.asBuilt];
      const failure = last === undefined ? undefined : failureOf(w, part, last);
      if (failure !== undefined) {
        const { end } = failure;
        const vehicle = failure.name;
        const when = withCorner(failure.corner);
        const what =
          failure.kind === 'falls'
            ? message('unsupported-end.falls', { vehicle, end, when })
            : failure.kind === 'balances'
              ? message('unsupported-end.balances', { vehicle, when })
              : message('unsupported-end.unsolved', { vehicle });
        return [found(failure, what, 'danger')];
      }
      const before = first === undefined ? undefined : failureOf(w, part, first);
      if (before === undefined || before.kind === 'unsolved') return [];
      const shared = { vehicle: before.name, end: before.end, when: withCorner(before.corner) };
      return [found(before, message('unsupported-end.as-found', shared), 'warning')];
    });
    return [...blind, ...untried, ...ends];
  },
};

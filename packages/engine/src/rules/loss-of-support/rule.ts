import type { Severity } from '../../finding/finding.js';
import { messages } from '../../finding/message.js';
import { type Failure, failureOf, withCorner } from '../../loss/failures.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  falls: 'If this goes ({loss}), nothing holds {end} of the {vehicle}{when}. Put a support under it.',
  balances:
    'If this goes ({loss}), the {vehicle} only balances{when}. Put supports on both sides of its center of gravity.',
  unsolved:
    'How the {vehicle} rests if this goes ({loss}) could not be worked out. Treat it as not held: this check has not passed.',
  'lost-here': 'This is what goes.',
} as const;
const say = messages('loss-of-support', words);

/**
 * A tire lets the vehicle down onto its rim, air springs onto their stops, and a corner that folds onto the body beside
 * it; what stands beneath lets it fall.
 */
function severityOf({ part, run }: Failure): Severity {
  const lost = part.component.points.filter((p) => run.loss?.points.includes(p.id) === true);
  return lost.every((p) => p.kind === 'tire' || p.kind === 'cab mount' || p.kind === 'body')
    ? 'warning'
    : 'danger';
}

function finding(f: Failure): RuleFinding {
  const loss = f.run.loss?.title ?? '';
  const shared = { loss, vehicle: f.name, when: withCorner(f.corner) };
  return {
    subject: { element: f.vehicle },
    at: { element: f.vehicle },
    severity: severityOf(f),
    message:
      f.kind === 'falls'
        ? say('falls', { ...shared, end: f.end })
        : f.kind === 'balances'
          ? say('balances', shared)
          : say('unsolved', { loss, vehicle: f.name }),
    related: f.run.loss === undefined ? [] : [{ at: f.run.loss.ref, message: say('lost-here', {}) }],
    ...(f.kind === 'unsolved' ? { couldNotRun: true } : {}),
    governs: [loss, f.corner].filter((t) => t !== '').join(', '),
  };
}

export const rule: Rule = {
  id: 'loss-of-support',
  title: 'Not held if a support gives way',
  family: 'whole set-up',
  severity: 'danger',
  protects:
    'A tire, an air spring, a landing gear leg or the car beneath may give way while crews work; what they put in must then hold.',
  sources: [practice],
  compares: ['center of gravity', 'place of the supports that are left'],
  words,
  check: (w) =>
    w.resting().parts.flatMap((part): readonly RuleFinding[] => {
      const last = part.stages.at(-1);
      if (last === undefined || failureOf(w, part, last.asBuilt) !== undefined) return [];
      return last.losses.flatMap((run) => {
        const failure = failureOf(w, part, run);
        return failure === undefined ? [] : [finding(failure)];
      });
    }),
};

import type { Severity } from '@cribwright/engine';
import { type Failure, failureOf, withCorner } from '@cribwright/engine/internal';
import { list, message, term } from '@cribwright/messages';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

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
  const loss = f.run.loss?.title ?? term('loss.all-in-place');
  const shared = { loss, vehicle: f.name, when: withCorner(f.corner) };
  return {
    subject: { element: f.vehicle },
    at: { element: f.vehicle },
    severity: severityOf(f),
    message:
      f.kind === 'falls'
        ? message('loss-of-support.falls', { ...shared, end: f.end })
        : f.kind === 'balances'
          ? message('loss-of-support.balances', shared)
          : message('loss-of-support.unsolved', { loss, vehicle: f.name }),
    related:
      f.run.loss === undefined ? [] : [{ at: f.run.loss.ref, message: term('loss-of-support.lost-here') }],
    ...(f.kind === 'unsolved' ? { couldNotRun: true } : {}),
    governs: list([loss, ...(f.corner === undefined ? [] : [f.corner])], 'plain'),
  };
}

export const rule: Rule = {
  id: 'loss-of-support',
  title: term('loss-of-support.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('loss-of-support.protects'),
  sources: [practice],
  compares: ['center of gravity', 'place of the supports that are left'],
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

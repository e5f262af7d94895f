import type { Workings } from '@cribwright/engine';
import type { ComponentRun } from '@cribwright/engine/internal';
import { failureOf, withCorner } from '@cribwright/engine/internal';
import { message, term } from '@cribwright/messages';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** Stages before the last: what the last one lacks has rules of its own. */
function inPart(w: Workings, part: ComponentRun): readonly RuleFinding[] {
  const { stages } = w.resting();
  return part.stages.slice(1, -1).flatMap((run, i): readonly RuleFinding[] => {
    const stage = stages[i + 1];
    const before = part.stages[i];
    if (stage === undefined || before === undefined) return [];
    const step = { element: stage.step ?? w.plan.id };
    if (failureOf(w, part, before.asBuilt) !== undefined) return [];
    const failure = failureOf(w, part, run.asBuilt);
    if (failure !== undefined)
      return [
        {
          subject: step,
          at: step,
          message: message('stage-unsafe.falls', {
            stage: stage.title,
            end: failure.end,
            vehicle: failure.name,
            when: withCorner(failure.corner),
          }),
        },
      ];
    return run.losses.flatMap((lost): readonly RuleFinding[] => {
      const now = failureOf(w, part, lost);
      const then = before.losses.find((l) => l.loss?.id === lost.loss?.id);
      if (now === undefined || then === undefined || failureOf(w, part, then) !== undefined) return [];
      return [
        {
          subject: step,
          at: step,
          severity: 'warning',
          message: message('stage-unsafe.worse', {
            stage: stage.title,
            end: now.end,
            vehicle: now.name,
            loss: lost.loss?.title ?? term('loss.all-in-place'),
            when: withCorner(now.corner),
          }),
        },
      ];
    });
  });
}

export const rule: Rule = {
  id: 'stage-unsafe',
  title: term('stage-unsafe.title'),
  family: 'order and crew',
  severity: 'danger',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('stage-unsafe.protects'),
  sources: [practice],
  compares: ['center of gravity', 'place of the supports after each step'],
  check: (w) => w.resting().parts.flatMap((part) => inPart(w, part)),
};

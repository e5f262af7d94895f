import { messages } from '../../finding/message.js';
import { failureOf, withCorner } from '../../loss/failures.js';
import type { ComponentRun } from '../../loss/loss-working.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  falls:
    'After {stage}, nothing holds {end} of the {vehicle}{when}. Put in what is to hold it before this step.',
  worse:
    'After {stage}, {end} of the {vehicle} is no longer held if this goes ({loss}){when}. Before this step it was.',
} as const;
const say = messages('stage-unsafe', words);

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
          message: say('falls', {
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
          message: say('worse', {
            stage: stage.title,
            end: now.end,
            vehicle: now.name,
            loss: lost.loss?.title ?? '',
            when: withCorner(now.corner),
          }),
        },
      ];
    });
  });
}

export const rule: Rule = {
  id: 'stage-unsafe',
  title: 'Unsafe while half built',
  family: 'order and crew',
  severity: 'danger',
  protects: 'A set-up that stands when finished may fall while it is being built or taken down.',
  sources: [practice],
  compares: ['center of gravity', 'place of the supports after each step'],
  words,
  check: (w) => w.resting().parts.flatMap((part) => inPart(w, part)),
};

import type { Severity, Workings } from '@cribwright/engine';
import type { Loss, StandingCase, StandingGroup, StandingStage } from '@cribwright/engine/internal';
import { holds, isUnheldNose, whatMoved, whenWords } from '@cribwright/engine/internal';
import { message, term } from '@cribwright/messages';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** Whether the vertical model has found the same: then loss-of-support or stage-unsafe says so. */
const isTold = (w: Workings, { id }: Loss, stage: string): boolean =>
  w
    .resting()
    .parts.some((part) =>
      part.stages.some(
        (run, s) =>
          w.resting().stages[s]?.id === stage &&
          (!holds(run.asBuilt) || run.losses.some((lost) => lost.loss?.id === id && !holds(lost))),
      ),
    );

/**
 * As in loss-of-support: a tire lets the vehicle down onto its rim, springs onto their stops. A closed coupling seldom
 * lets go.
 */
function severityOf(w: Workings, group: StandingGroup, { points }: Loss): Severity {
  const lost = group.group.points.filter((p) => points.includes(p.id));
  const coupled = new Set(w.plan.contacts.filter((c) => c.coupled).map((c) => c.id));
  const isLow = lost.every(
    (p) =>
      p.kind === 'tire' ||
      p.kind === 'cab mount' ||
      p.kind === 'body' ||
      (p.group !== undefined && coupled.has(p.group)),
  );
  return lost.length > 0 && isLow ? 'warning' : 'danger';
}

function finding(
  w: Workings,
  group: StandingGroup,
  { stage }: StandingStage,
  of: StandingCase,
  isLast: boolean,
): RuleFinding | undefined {
  const { loss } = of;
  const failure = isLast ? of.failure : of.worse;
  if (loss === undefined || failure === undefined || isTold(w, loss, stage.id)) return undefined;
  const { element, words } = whatMoved(w, group.group, failure);
  const when = whenWords(group.group, failure);
  const holes = { loss: loss.title, what: words, ...(when === undefined ? {} : { when }) };
  const subject = { element };
  return {
    subject,
    at: isLast || stage.step === undefined ? subject : { element: stage.step },
    severity: isLast ? severityOf(w, group, loss) : 'warning',
    message:
      failure.kind === 'not solved'
        ? message('loss-moves.unsolved', holes)
        : !isLast
          ? message('loss-moves.worse', { ...holes, stage: stage.title })
          : failure.kind === 'rolls'
            ? message('loss-moves.rolls', holes)
            : failure.kind === 'slides'
              ? message('loss-moves.slides', holes)
              : failure.kind === 'falls'
                ? message('loss-moves.falls', holes)
                : message('loss-moves.moves', holes),
    related: [{ at: loss.ref, message: term('loss-moves.lost-here') }],
    governs: loss.title,
    ...(failure.kind === 'not solved' ? { couldNotRun: true } : {}),
  };
}

/** Every loss that the finished plan does not hold; and of a half-built one, each that the stage before held. */
function inGroup(w: Workings, group: StandingGroup): readonly RuleFinding[] {
  if (isUnheldNose(group)) return [];
  const last = group.stages.at(-1);
  return group.stages.flatMap((stage) =>
    stage.asBuilt.failure !== undefined
      ? []
      : stage.losses.flatMap((of) => finding(w, group, stage, of, stage === last) ?? []),
  );
}

export const rule: Rule = {
  id: 'loss-moves',
  title: term('loss-moves.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('loss-moves.protects'),
  sources: [practice],
  compares: ['forces that are left to hold each vehicle', 'weight, grade and tool loads'],
  // Heavy: it runs with the pushes.
  check: (w) => (w.options.push === true ? w.standing().groups.flatMap((group) => inGroup(w, group)) : []),
};

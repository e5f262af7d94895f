import type { Workings } from '@cribwright/engine';
import type { StandingFailure, StandingGroup, StandingStage } from '@cribwright/engine/internal';
import { gradeFigure, holds, isUnheldNose, nameOf, whatMoved, whenWords } from '@cribwright/engine/internal';
import { count, list, message, name, shown, term } from '@cribwright/messages';
import { practice, published, type Rule, type RuleFinding } from '../definition/rule.js';

/** Whether the vertical model has found at this stage that a vehicle is not held: then its own rules say so. */
const isTold = (w: Workings, element: string, stage: string): boolean =>
  w
    .resting()
    .parts.some(
      (part) =>
        part.component.bodies.some((b) => b.vehicle === element) &&
        part.stages.some((run, s) => w.resting().stages[s]?.id === stage && !holds(run.asBuilt)),
    );

function finding(
  w: Workings,
  group: StandingGroup,
  { stage }: StandingStage,
  failure: StandingFailure,
): RuleFinding | undefined {
  const { element, words } = whatMoved(w, group.group, failure);
  if (failure.kind !== 'rolls' && failure.kind !== 'slides' && isTold(w, element, stage.id)) return undefined;
  const when = whenWords(group.group, failure);
  const holes = { stage: stage.title, what: words, ...(when === undefined ? {} : { when }) };
  const grade = gradeFigure(w.plan.ground);
  const subject = { element };
  return {
    subject,
    at: stage.step === undefined ? subject : { element: stage.step },
    message:
      failure.kind === 'rolls'
        ? message('stage-moves.rolls', { ...holes, grade: shown(grade) })
        : failure.kind === 'slides'
          ? message('stage-moves.slides', { ...holes, grade: shown(grade) })
          : failure.kind === 'falls'
            ? message('stage-moves.falls', holes)
            : failure.kind === 'moves too far'
              ? message('stage-moves.moves', holes)
              : message('stage-moves.unsolved', holes),
    figures: [grade],
    ...(failure.kind === 'not solved' ? { couldNotRun: true } : {}),
  };
}

/** A stage that is worse than the one before it, and the finished plan. */
function inGroup(w: Workings, group: StandingGroup): readonly RuleFinding[] {
  if (isUnheldNose(group)) return [];
  const last = group.stages.length - 1;
  return group.stages.flatMap((stage, s): readonly RuleFinding[] => {
    const { failure } = stage.asBuilt;
    if (failure === undefined) return [];
    const before = group.stages[s - 1]?.asBuilt.failure;
    if (s !== last && (s === 0 || before !== undefined)) return [];
    return [finding(w, group, stage, failure) ?? []].flat();
  });
}

/** Corners of the ranges that are too many to be worked out. */
const leftOut = (w: Workings): readonly RuleFinding[] =>
  w.standing().leftOut.map(({ vehicles, done, of }) => {
    const subject = { element: vehicles[0] ?? w.plan.id };
    const names = vehicles.map((v) => name(nameOf(w, v)));
    return {
      subject,
      at: subject,
      severity: 'warning',
      message: message('stage-moves.left-out', {
        vehicles: list(names, 'and'),
        done: count(done),
        of: count(of),
      }),
      couldNotRun: true,
    };
  });

export const rule: Rule = {
  id: 'stage-moves',
  title: term('stage-moves.title'),
  family: 'whole system',
  severity: 'danger',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('stage-moves.protects'),
  sources: [
    practice,
    published('OpenStax University Physics, volume 1', 'section 6.2: the incline, W sin θ against μ N'),
  ],
  compares: ['forces that hold each vehicle after each step', 'weight, grade and tool loads'],
  // Heavy: it runs with the pushes.
  check: (w) =>
    w.options.push === true
      ? [...w.standing().groups.flatMap((group) => inGroup(w, group)), ...leftOut(w)]
      : [],
};

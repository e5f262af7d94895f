import type { Severity, Workings } from '@cribwright/engine';
import type { Loss, StandingCase, StandingGroup } from '@cribwright/engine/internal';
import { holds, isUnheldNose, whatMoved, whenWords } from '@cribwright/engine/internal';
import { message, term } from '@cribwright/messages';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** Whether the vertical model has found the same: then loss-of-support says so. */
const isTold = (w: Workings, { id }: Loss): boolean =>
  w
    .resting()
    .parts.some((part) => part.stages.at(-1)?.losses.some((run) => run.loss?.id === id && !holds(run)));

/** As in loss-of-support: a tire lets the vehicle down onto its rim, springs onto their stops. */
function severityOf(group: StandingGroup, { points }: Loss): Severity {
  const lost = group.group.points.filter((p) => points.includes(p.id));
  const isLow = lost.every((p) => p.kind === 'tire' || p.kind === 'cab mount' || p.kind === 'body');
  return lost.length > 0 && isLow ? 'warning' : 'danger';
}

function finding(w: Workings, group: StandingGroup, of: StandingCase): RuleFinding | undefined {
  const { loss, failure } = of;
  if (loss === undefined || failure === undefined || isTold(w, loss)) return undefined;
  const { element, words } = whatMoved(w, group.group, failure);
  const when = whenWords(group.group, failure);
  const holes = { loss: loss.title, what: words, ...(when === undefined ? {} : { when }) };
  const subject = { element };
  return {
    subject,
    at: subject,
    severity: severityOf(group, loss),
    message:
      failure.kind === 'rolls'
        ? message('loss-moves.rolls', holes)
        : failure.kind === 'slides'
          ? message('loss-moves.slides', holes)
          : failure.kind === 'falls'
            ? message('loss-moves.falls', holes)
            : failure.kind === 'moves too far'
              ? message('loss-moves.moves', holes)
              : message('loss-moves.unsolved', holes),
    related: [{ at: loss.ref, message: term('loss-moves.lost-here') }],
    governs: loss.title,
    ...(failure.kind === 'not solved' ? { couldNotRun: true } : {}),
  };
}

function inGroup(w: Workings, group: StandingGroup): readonly RuleFinding[] {
  const last = group.stages.at(-1);
  if (last === undefined || isUnheldNose(group) || last.asBuilt.failure !== undefined) return [];
  return last.losses.flatMap((of) => finding(w, group, of) ?? []);
}

export const rule: Rule = {
  id: 'loss-moves',
  title: term('loss-moves.title'),
  family: 'whole system',
  severity: 'danger',
  protects: term('loss-moves.protects'),
  sources: [practice],
  compares: ['forces that are left to hold each vehicle', 'weight, grade and tool loads'],
  // Heavy: it runs with the pushes.
  check: (w) => (w.options.push === true ? w.standing().groups.flatMap((group) => inGroup(w, group)) : []),
};

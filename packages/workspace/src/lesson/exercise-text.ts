import type { BoundBlock } from '@cribwright/language';
import { exerciseProperties } from '@cribwright/language/internal';
import { count, type Message, message, type Name, name, term } from '@cribwright/messages';
import { figureWords, thingWords } from './asked-words.js';
import { contactNumber } from './contact-number.js';
import type { ExercisePlan } from './exercise-plan.js';
import { lineOf, linesOf } from './line-of.js';

/** What the student reads. An exercise without an `ask` line asks in words made from what it is about. */
export function exerciseText(
  block: BoundBlock,
  about: ExercisePlan | undefined,
): {
  readonly ask: Message | Name;
  readonly hints: readonly string[];
  readonly points: number | undefined;
} {
  const own = lineOf(block, exerciseProperties.ask)?.ask.text;
  const points = lineOf(block, exerciseProperties.points)?.points.expression;
  return {
    ask: own === undefined ? asked(block, about) : name(own),
    hints: linesOf(block, exerciseProperties.hint).map((l) => l.hint.text),
    points: points?.kind === 'number' ? points.value : undefined,
  };
}

function asked(block: BoundBlock, about: ExercisePlan | undefined): Message {
  const work = lineOf(block, exerciseProperties.workOut);
  if (work) {
    const holes = { figure: figureWords(work.figure.text), on: thingWords(work.on.text, about) };
    const contact = contactNumber(work.contact?.expression);
    return contact === undefined
      ? message('lesson.work-out', holes)
      : message('lesson.work-out-contact', { ...holes, contact: count(contact) });
  }
  const find = lineOf(block, exerciseProperties.find);
  if (find)
    return find.on === undefined
      ? term('lesson.find-all')
      : message('lesson.find-on', { on: thingWords(find.on.text, about) });
  const finish = lineOf(block, exerciseProperties.finish);
  if (finish === undefined) return term('lesson.asks-nothing');
  const on = thingWords(finish.on.text, about);
  return finish.leaveOut === undefined
    ? message('lesson.finish', { on })
    : message('lesson.finish-line', { on, line: name(finish.leaveOut.text) });
}

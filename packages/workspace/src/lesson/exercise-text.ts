import type { BoundBlock } from '@cribwright/language';
import { exerciseProperties } from '@cribwright/language/internal';
import { type Message, message, type Name, name, term } from '@cribwright/messages';
import { lineOf, linesOf } from './line-of.js';

/** What the student reads. An exercise without an `ask` line asks in words made from what it is about. */
export function exerciseText(block: BoundBlock): {
  readonly ask: Message | Name;
  readonly hints: readonly string[];
  readonly points: number | undefined;
} {
  const own = lineOf(block, exerciseProperties.ask)?.ask.text;
  const points = lineOf(block, exerciseProperties.points)?.points.expression;
  return {
    ask: own === undefined ? asked(block) : name(own),
    hints: linesOf(block, exerciseProperties.hint).map((l) => l.hint.text),
    points: points?.kind === 'number' ? points.value : undefined,
  };
}

function asked(block: BoundBlock): Message {
  const work = lineOf(block, exerciseProperties.workOut);
  if (work) return message('lesson.work-out', { figure: name(work.figure.text), on: name(work.on.text) });
  const find = lineOf(block, exerciseProperties.find);
  if (find)
    return find.on === undefined
      ? term('lesson.find-all')
      : message('lesson.find-on', { on: name(find.on.text) });
  const finish = lineOf(block, exerciseProperties.finish);
  return finish === undefined
    ? term('lesson.asks-nothing')
    : message('lesson.finish', { on: name(finish.on.text) });
}

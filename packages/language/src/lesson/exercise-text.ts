import type { BoundBlock } from '../binding/bound-file.js';
import { exerciseProperties } from '../schema/lesson.js';
import { lineOf, linesOf } from './line-of.js';

/** What the student reads. An exercise without an `ask` line asks in words made from what it is about. */
export function exerciseText(block: BoundBlock): {
  readonly ask: string;
  readonly hints: readonly string[];
  readonly points: number | undefined;
} {
  const points = lineOf(block, exerciseProperties.points)?.points.expression;
  return {
    ask: lineOf(block, exerciseProperties.ask)?.ask.text ?? asked(block),
    hints: linesOf(block, exerciseProperties.hint).map((l) => l.hint.text),
    points: points?.kind === 'number' ? points.value : undefined,
  };
}

function asked(block: BoundBlock): string {
  const work = lineOf(block, exerciseProperties.workOut);
  if (work) return `Work out the ${work.figure.text} of ${work.on.text}.`;
  const find = lineOf(block, exerciseProperties.find);
  if (find) return find.on === undefined ? 'Find every fault.' : `What is wrong with ${find.on.text}?`;
  const finish = lineOf(block, exerciseProperties.finish);
  return finish === undefined ? '' : `Finish ${finish.on.text}.`;
}

import type { Span } from '@cribwright/syntax/internal';
import type { Position, Range } from 'vscode-languageserver-types';

/** Starts of the lines of the texts last asked about: files are asked about many times in a row. */
const known = new Map<string, readonly number[]>();

const startsOf = (text: string): readonly number[] => {
  const found = known.get(text);
  if (found) return found;
  const starts = [0];
  for (const m of text.matchAll(/\r\n|\r|\n/g)) starts.push(m.index + m[0].length);
  if (known.size >= 24) known.delete(known.keys().next().value ?? '');
  known.set(text, starts);
  return starts;
};

/** Line and character of an offset, both from 0. */
export function positionOf(text: string, offset: number): Position {
  const starts = startsOf(text);
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low, character: offset - (starts[low] ?? 0) };
}

/** Lines and characters of a span, counted from 0. */
export const rangeOf = (text: string, { start, end }: Span): Range => ({
  start: positionOf(text, start),
  end: positionOf(text, end),
});

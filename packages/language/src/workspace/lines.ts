import type { Position, Range } from 'vscode-languageserver-types';
import type { Span } from '../grammar/syntax.js';

/** Offsets of the starts of the lines of the text last asked about: files are asked about many times in a row. */
let last: { readonly text: string; readonly starts: readonly number[] } = { text: '', starts: [0] };

const startsOf = (text: string): readonly number[] => {
  if (last.text === text) return last.starts;
  const starts = [0];
  for (const m of text.matchAll(/\r\n|\r|\n/g)) starts.push(m.index + m[0].length);
  last = { text, starts };
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

export const rangeOf = (text: string, { start, end }: Span): Range => ({
  start: positionOf(text, start),
  end: positionOf(text, end),
});

import type { SyntaxStatement } from '@cribwright/syntax/internal';
import type { TextToken } from './pieces.js';

/** One line of the text, without its white space. */
export interface Row {
  readonly pieces: readonly TextToken[];
  readonly depth: number;
  /** Goes on with a statement that began on an earlier line. */
  readonly continues: boolean;
  readonly blankBefore: boolean;
  /** The one statement that stands here alone, where its columns may be lined up. */
  readonly statement: SyntaxStatement | undefined;
}

/** Splits pieces at line breaks, and says how deep in braces each line stands. */
export function rows(text: string, all: readonly TextToken[]): readonly Row[] {
  const found: Row[] = [];
  let depth = 0;
  for (let from = 0; from < all.length; ) {
    let to = from + 1;
    while (to < all.length && breaksBefore(text, all, to) === 0) to++;
    const line = all.slice(from, to);
    const leading = line.findIndex((p) => p.kind !== 'close');
    const closes = leading < 0 ? line.length : leading;
    const first = line[0];
    found.push({
      pieces: line,
      depth: Math.max(0, depth - closes),
      continues: first?.of !== undefined && first.of.terms[0]?.start !== first.start,
      blankBefore: from > 0 && breaksBefore(text, all, from) > 1,
      statement: alone(line),
    });
    for (const piece of line) {
      if (piece.kind === 'open') depth++;
      if (piece.kind === 'close') depth = Math.max(0, depth - 1);
    }
    from = to;
  }
  return found;
}

/** Line breaks in the white space before a piece. */
export function breaksBefore(text: string, all: readonly TextToken[], index: number): number {
  const gap = text.slice(all[index - 1]?.end ?? 0, all[index]?.start ?? text.length);
  return gap.match(/\r\n|\r|\n/g)?.length ?? 0;
}

function alone(line: readonly TextToken[]): SyntaxStatement | undefined {
  const end = line.at(-1)?.kind === 'line comment' ? line.length - 1 : line.length;
  const statement = line[0]?.of;
  const terms = line.slice(0, end);
  const only = statement && statement.body === undefined && statement.terms[0]?.start === line[0]?.start;
  return only && terms.every((p) => p.of === statement) ? statement : undefined;
}

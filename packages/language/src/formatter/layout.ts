import type { SyntaxStatement } from '@cribwright/syntax/internal';
import { type Cells, type Line, lineUp } from './columns.js';
import { inlineGap } from './gaps.js';
import { type TextToken, textTokens } from './pieces.js';
import { breaksBefore, type Row, rows } from './rows.js';

export interface Style {
  /** One step of indentation. */
  readonly indent: string;
  readonly cells: Cells;
}

/** A stretch of white space and what it should be. */
export interface GapEdit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/**
 * Lays a text out: indents by braces, lines up the columns of neighboring lines, keeps at most one blank line.
 * Touches white space alone, and never the breaks that end a statement, so it cannot change what a plan says.
 */
export function layOutText(
  text: string,
  statements: readonly SyntaxStatement[],
  style: Style,
): readonly GapEdit[] {
  const all = textTokens(text, statements);
  const lines = rows(text, all);
  const leads = new Map<number, string>();
  for (const run of runs(text, lines, style)) for (const [at, gap] of lineUp(run)) leads.set(at, gap);
  const eol = /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
  const edits: GapEdit[] = [];
  const put = (start: number, end: number, gap: string): void => {
    if (text.slice(start, end) !== gap) edits.push({ start, end, text: gap });
  };
  let end = 0;
  let index = 0;
  for (const row of lines) {
    let parens = 0;
    for (const [i, piece] of row.pieces.entries()) {
      const before = row.pieces[i - 1];
      const was = text.slice(end, piece.start);
      if (piece.text === ')') parens--;
      const gap = before
        ? (leads.get(piece.start) ?? inlineGap(was, before, piece, parens > 0))
        : `${lineBreak(text, all, index, eol)}${style.indent.repeat(row.depth + (row.continues ? 2 : 0))}`;
      put(end, piece.start, gap);
      if (piece.text === '(') parens++;
      end = piece.end;
      index++;
    }
  }
  if (all.length > 0) put(end, text.length, eol);
  return edits;
}

function lineBreak(text: string, all: readonly TextToken[], index: number, eol: string): string {
  if (index === 0) return text.startsWith('\ufeff') ? '\ufeff' : '';
  const blank =
    breaksBefore(text, all, index) > 1 && all[index - 1]?.kind !== 'open' && all[index]?.kind !== 'close';
  return blank ? eol + eol : eol;
}

/** Neighboring lines that line up: one statement each, equally deep, no blank line and no block between. */
function runs(text: string, lines: readonly Row[], { cells }: Style): readonly (readonly Line[])[] {
  const found: Line[][] = [];
  let last: Row | undefined;
  for (const row of lines) {
    // A line of its own for a comment, or the rest of a long statement, does not part its neighbors.
    if (last && !row.blankBefore && row.depth === last.depth && (row.continues || isComment(row))) continue;
    if (!row.statement || row.depth === 0) {
      last = undefined;
      continue;
    }
    const line = lineOf(text, row, row.statement, cells);
    if (last && !row.blankBefore && row.depth === last.depth) found.at(-1)?.push(line);
    else found.push([line]);
    last = row;
  }
  return found;
}

const isComment = (row: Row): boolean => row.pieces.every((p) => p.kind === 'line comment');

function lineOf(text: string, row: Row, statement: SyntaxStatement, cells: Cells): Line {
  const own = row.pieces.filter((p) => p.of === statement);
  const starts = cells(statement).filter(({ at }) => at > 0 && at < own.length);
  const cuts = [{ at: 0, column: '' }, ...starts];
  const segments = cuts.map(({ at, column }, i) => {
    const part = own.slice(at, cuts[i + 1]?.at);
    return { column, from: part[0]?.start ?? 0, width: widthOf(text, part) };
  });
  return { row, segments };
}

/** Of a stretch of a line, once its inner white space is set right. */
function widthOf(text: string, part: readonly TextToken[]): number {
  let width = 0;
  let parens = 0;
  for (const [i, piece] of part.entries()) {
    const before = part[i - 1];
    if (piece.text === ')') parens--;
    if (before) width += inlineGap(text.slice(before.end, piece.start), before, piece, parens > 0).length;
    if (piece.text === '(') parens++;
    width += [...piece.text].length;
  }
  return width;
}

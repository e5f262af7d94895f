import type { SyntaxStatement } from '@cribwright/syntax/internal';
import type { Row } from './rows.js';

/** Where a column begins within a statement: its term, and the column's name, equal in lines that line up. */
export interface Cell {
  readonly at: number;
  readonly column: string;
}
export type Cells = (statement: SyntaxStatement) => readonly Cell[];

/** A line as segments, one for each of its columns, and its trailing comment. */
export interface Line {
  readonly row: Row;
  readonly segments: readonly { readonly column: string; readonly from: number; readonly width: number }[];
}

/** White space that leads up to a piece, by the offset where the piece starts. */
export type Leads = ReadonlyMap<number, string>;

/**
 * Lines up a run of lines: each column starts two spaces past the widest of what stands before it. Where all
 * lines begin alike there is nothing to read down, and one space does.
 */
export function lineUp(lines: readonly Line[]): Leads {
  const leads = new Map<number, string>();
  const keys = new Set(lines.map((l) => keyOf(l)));
  const order = columnOrder(lines);
  const ends = lines.map((l) => l.segments[0]?.width ?? 0);
  const next = lines.map(() => 1);
  for (const column of order) {
    const taking = lines.flatMap((line, i) => (line.segments[next[i] ?? 0]?.column === column ? [i] : []));
    // A line that goes on in a later column counts too: its words must not reach into this one.
    const going = lines.flatMap((line, i) => ((next[i] ?? 0) < line.segments.length ? [i] : []));
    const start = Math.max(...going.map((i) => ends[i] ?? 0)) + 2;
    for (const i of taking) {
      const segment = lines[i]?.segments[next[i] ?? 0];
      if (!segment) continue;
      const gap = keys.size > 1 ? start - (ends[i] ?? 0) : next[i] === 1 ? 1 : 2;
      leads.set(segment.from, ' '.repeat(gap));
      ends[i] = (ends[i] ?? 0) + gap + segment.width;
      next[i] = (next[i] ?? 0) + 1;
    }
  }
  // A line with its columns in another order: set apart, not lined up.
  lines.forEach((line, i) => {
    for (const segment of line.segments.slice(next[i] ?? 0)) {
      leads.set(segment.from, '  ');
      ends[i] = (ends[i] ?? 0) + 2 + segment.width;
    }
  });
  const commented = lines.flatMap((line, i) => (commentOf(line.row) === undefined ? [] : [ends[i] ?? 0]));
  const wall = Math.max(0, ...commented) + 2;
  lines.forEach((line, i) => {
    const comment = commentOf(line.row);
    if (comment !== undefined) leads.set(comment, ' '.repeat(wall - (ends[i] ?? 0)));
  });
  return leads;
}

const keyOf = ({ row, segments }: Line): string => {
  const until = segments[1]?.from ?? Number.POSITIVE_INFINITY;
  return row.pieces
    .filter((p) => p.start < until)
    .map((p) => p.text)
    .join(' ');
};

const commentOf = (row: Row): number | undefined => {
  const last = row.pieces.at(-1);
  return last?.kind === 'line comment' && row.pieces.length > 1 ? last.start : undefined;
};

/** Columns in the order in which the lines name them first. */
function columnOrder(lines: readonly Line[]): readonly string[] {
  const order: string[] = [];
  for (const { segments } of lines) {
    let at = 0;
    for (const { column } of segments.slice(1)) {
      const known = order.indexOf(column);
      if (known < 0) order.splice(at++, 0, column);
      else at = Math.max(at, known + 1);
    }
  }
  return order;
}

import type { BoundBlock, BoundFile, BoundProperty } from '../bound/bound-file.js';
import type { Pattern } from '../bound/shape.js';
import type { Cell, Cells } from './columns.js';

/**
 * Where the columns of each line are, by the schema: the value after the key; of a step its action, what it acts
 * on, and each clause; of a limit its source.
 */
export function cellsOf(file: BoundFile): Cells {
  const lines = new Map<number, BoundProperty>();
  const visit = (block: BoundBlock): void => {
    for (const property of block.properties) lines.set(property.span.start, property);
    block.blocks.forEach(visit);
  };
  file.blocks.forEach(visit);
  return ({ start }) => {
    const line = lines.get(start);
    return line ? cellsOfLine(line) : [];
  };
}

function cellsOfLine(line: BoundProperty): readonly Cell[] {
  const value = line.terms.findIndex((t) => t.start >= line.keySpan.end);
  if (value < 1) return [];
  const numbered = line.block?.schema.numbered === line.schema;
  const clauses = numbered ? clauseWords(line.schema.phrase) : sourceOnly;
  const cells: Cell[] = [{ at: value, column: 'value' }];
  const target = numbered ? afterAction(line, value) : -1;
  if (target > value) cells.push({ at: target, column: 'targets' });
  line.terms.forEach(({ kind, text }, at) => {
    if (at > value && kind === 'word' && clauses.has(text) && !cells.some((c) => c.column === text))
      cells.push({ at, column: text });
  });
  // An action without a target goes straight to its clauses.
  return cells.filter((c, i) => c.column !== 'targets' || cells[i + 1]?.at !== c.at);
}

/** The first term past the action, which may be two words: `size up`. */
function afterAction({ terms, match }: BoundProperty, action: number): number {
  const start = terms[action]?.start;
  const end = match?.pieces.find((p) => p.span.start === start)?.span.end ?? terms[action]?.end ?? 0;
  return terms.findIndex((t) => t.start >= end);
}

const sourceOnly: ReadonlySet<string> = new Set(['source']);

/** The words that begin what may be left out at the end of a phrase: `crew`, `takes`, `with`, `after`. */
function clauseWords(phrase: Pattern): ReadonlySet<string> {
  const words = new Set<string>();
  const first = (p: Pattern): void => {
    if (p.kind === 'word') for (const w of p.words) words.add(w);
    if (p.kind === 'sequence' && p.items[0]) first(p.items[0]);
  };
  const visit = (p: Pattern): void => {
    if (p.kind === 'optional') first(p.item);
    if (p.kind === 'sequence' || p.kind === 'any order')
      p.items.forEach(p.kind === 'sequence' ? visit : clause);
  };
  const clause = (p: Pattern): void => first(p.kind === 'optional' ? p.item : p);
  visit(phrase);
  return words;
}

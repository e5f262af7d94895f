import type { BoundBlock, BoundFile } from '@cribwright/language';
import { textTokens } from '@cribwright/language/internal';
import { type FoldingRange, FoldingRangeKind } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import { documentOf } from '../context/positions.js';

/** `textDocument/foldingRange`: blocks, runs of comments, and the `use` lines at the top. */
export const foldingRange: Feature = {
  offers: () => ({ foldingRangeProvider: true }),
  serve({ connection, file }) {
    connection.onFoldingRanges(async ({ textDocument }) => {
      const found = await file(textDocument.uri);
      return found ? foldsOf(found) : null;
    });
  },
};

export function foldsOf(file: BoundFile): FoldingRange[] {
  const line = (offset: number): number => documentOf(file).positionAt(offset).line;
  const folds: FoldingRange[] = [];
  const add = (startLine: number, endLine: number, kind?: FoldingRangeKind): void => {
    if (endLine > startLine) folds.push({ startLine, endLine, ...(kind ? { kind } : {}) });
  };
  const visit = (block: BoundBlock): void => {
    // The closing brace stays in sight.
    if (block.bodySpan) add(line(block.bodySpan.start), line(block.bodySpan.end) - 1);
    block.blocks.forEach(visit);
  };
  file.blocks.forEach(visit);
  const [first, last] = [file.uses[0], file.uses.at(-1)];
  if (first && last) add(line(first.span.start), line(last.span.end), FoldingRangeKind.Imports);
  for (const [from, to] of commentRuns(file, line)) add(from, to, FoldingRangeKind.Comment);
  return folds;
}

/** Comments on lines of their own that follow one another. */
function commentRuns(file: BoundFile, line: (offset: number) => number): [number, number][] {
  const runs: [number, number][] = [];
  const all = textTokens(file.text, file.statements);
  for (const [i, piece] of all.entries()) {
    if (!piece.kind.endsWith('comment')) continue;
    const before = all[i - 1];
    const [from, to] = [line(piece.start), line(piece.end)];
    if (before && line(before.end) === from) continue;
    const run = runs.at(-1);
    if (run && run[1] === from - 1) run[1] = to;
    else runs.push([from, to]);
  }
  return runs;
}

import type { BoundBlock, BoundFile } from '@cribwright/language';
import { blockAt, propertyAt } from '@cribwright/language/internal';
import type { Span } from '@cribwright/syntax/internal';
import type { SelectionRange } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import { offsetAt, rangeOf, touches } from '../context/positions.js';

/** `textDocument/selectionRange`: from a word outward to its value, its line, its block, the file. */
export const selectionRange: Feature = {
  offers: () => ({ selectionRangeProvider: true }),
  serve({ connection, file }) {
    connection.onSelectionRanges(async ({ textDocument, positions }) => {
      const found = await file(textDocument.uri);
      return found ? positions.map((p) => selectionsAt(found, offsetAt(found, p))) : null;
    });
  },
};

export function selectionsAt(file: BoundFile, offset: number): SelectionRange {
  let chain: SelectionRange | undefined;
  for (const span of spansAt(file, offset)) {
    const range = rangeOf(file, span);
    chain = chain ? { range, parent: chain } : { range };
  }
  return chain ?? { range: rangeOf(file, { start: offset, end: offset }) };
}

/** Outermost first; each inside the one before it. */
function spansAt(file: BoundFile, offset: number): readonly Span[] {
  const blocks: BoundBlock[] = [];
  for (let b = blockAt(file, offset); b; b = b.parent) blocks.unshift(b);
  const line = propertyAt(file, offset);
  const words = (line?.terms ?? []).filter((t) => touches(t, offset)).slice(-1);
  const afterKey = line && offset > line.keySpan.end;
  const value = line?.terms.find((t) => t.start >= line.keySpan.end);
  const inner = blocks.at(-1);
  const spans: Span[] = [
    { start: 0, end: file.text.length },
    ...blocks.flatMap((b) => {
      const inside = b.bodySpan && {
        start: b.bodySpan.start + 1,
        end: Math.max(b.bodySpan.start + 1, b.bodySpan.end - 1),
      };
      return inside && touches(inside, offset) ? [b.span, inside] : [b.span];
    }),
    ...(inner && !line && touches(inner.headSpan, offset) ? [inner.headSpan] : []),
    ...(line ? [line.span] : []),
    ...(line && afterKey && value ? [{ start: value.start, end: line.span.end }] : []),
    ...words,
    ...(inner && !line ? [inner.nameSpan, inner.titleSpan, inner.keywordSpan] : []).flatMap((s) =>
      s && touches(s, offset) ? [s] : [],
    ),
  ];
  const kept: Span[] = [];
  for (const span of spans) {
    const last = kept.at(-1);
    const within = !last || (span.start >= last.start && span.end <= last.end);
    const same = last && span.start === last.start && span.end === last.end;
    if (within && !same) kept.push(span);
  }
  return kept;
}

import type { BoundFile } from '@cribwright/language';
import { type DocumentHighlight, DocumentHighlightKind, type Position } from 'vscode-languageserver';
import { nameAt, usesIn } from '../context/at-cursor.js';
import type { Feature } from '../context/feature.js';
import { offsetAt, rangeOf } from '../context/positions.js';

/** `textDocument/documentHighlight`: where else in this file the name under the cursor stands. */
export const documentHighlight: Feature = {
  offers: () => ({ documentHighlightProvider: true }),
  serve({ connection, file }) {
    connection.onDocumentHighlight(async ({ textDocument, position }) => {
      const found = await file(textDocument.uri);
      return found ? highlightsAt(found, offsetAt(found, position)) : null;
    });
  },
};

const order = (a: Position, b: Position): number => a.line - b.line || a.character - b.character;

export function highlightsAt(file: BoundFile, offset: number): DocumentHighlight[] {
  const name = nameAt(file, offset);
  if (!name) return [];
  const declared =
    name.target.uri === file.uri
      ? [{ range: rangeOf(file, name.target.nameSpan), kind: DocumentHighlightKind.Write }]
      : [];
  const used = usesIn(file, name.target).map(({ span }) => ({
    range: rangeOf(file, span),
    kind: DocumentHighlightKind.Read,
  }));
  return [...declared, ...used].sort((a, b) => order(a.range.start, b.range.start));
}

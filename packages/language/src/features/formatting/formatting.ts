import type { FormattingOptions, TextEdit } from 'vscode-languageserver';
import type { BoundFile } from '../../binding/bound-file.js';
import type { Span } from '../../grammar/syntax.js';
import type { Feature } from '../feature.js';
import { rangeOf, spanOf } from '../positions.js';
import { cellsOf } from './cells.js';
import { type GapEdit, layOutText } from './layout.js';

/**
 * `textDocument/formatting` and `rangeFormatting`. Changes white space alone. A file whose braces, quotes or
 * comments do not close is left as it is: where a line belongs cannot be known there.
 */
export const formatting: Feature = {
  offers: () => ({ documentFormattingProvider: true, documentRangeFormattingProvider: true }),
  serve({ connection, file }) {
    connection.onDocumentFormatting(async ({ textDocument, options }) => {
      const found = await file(textDocument.uri);
      return found ? formatEdits(found, options) : null;
    });
    connection.onDocumentRangeFormatting(async ({ textDocument, range, options }) => {
      const found = await file(textDocument.uri);
      return found ? formatEdits(found, options, spanOf(found, range)) : null;
    });
  },
};

export const formatEdits = (file: BoundFile, options: FormattingOptions, within?: Span): TextEdit[] =>
  gapEdits(file, options)
    .filter((e) => !within || (e.end >= within.start && e.start <= within.end))
    .map((e) => ({ range: rangeOf(file, e), newText: e.text }));

export function gapEdits(file: BoundFile, { insertSpaces, tabSize }: FormattingOptions): readonly GapEdit[] {
  if (file.brokenLayout) return [];
  const indent = insertSpaces ? ' '.repeat(Math.min(8, Math.max(1, tabSize))) : '\t';
  return layOutText(file.text, file.statements, { indent, cells: cellsOf(file) });
}

/** The whole text laid out, as a command line wants it. Unchanged where the layout is broken. */
export function formatted(
  file: BoundFile,
  options: FormattingOptions = { insertSpaces: true, tabSize: 2 },
): string {
  let text = '';
  let from = 0;
  for (const edit of gapEdits(file, options)) {
    text += file.text.slice(from, edit.start) + edit.text;
    from = edit.end;
  }
  return text + file.text.slice(from);
}

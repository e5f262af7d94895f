import type { BoundFile } from '@cribwright/language';
import { gapEdits } from '@cribwright/language/internal';
import type { Span } from '@cribwright/syntax/internal';
import type { FormattingOptions, TextEdit } from 'vscode-languageserver';
import type { Feature } from '../../context/feature.js';
import { rangeOf, spanOf } from '../../context/positions.js';

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

import type { BoundFile } from '@cribwright/language';
import { gapEdits } from '@cribwright/language/internal';
import type { FormattingOptions, TextEdit } from 'vscode-languageserver';
import type { Feature } from '../../context/feature.js';
import { documentOf, offsetAt, rangeOf } from '../../context/positions.js';

/**
 * `textDocument/onTypeFormatting`: after `}` the block it closes is laid out; after a new line, the line that was
 * left. The line that is being typed is never moved under the cursor.
 */
export const onTypeFormatting: Feature = {
  offers: () => ({
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '}', moreTriggerCharacter: ['\n'] },
  }),
  serve({ connection, file }) {
    connection.onDocumentOnTypeFormatting(async ({ textDocument, position, ch, options }) => {
      const found = await file(textDocument.uri);
      return found ? editsOnType(found, offsetAt(found, position), ch, options) : null;
    });
  },
};

export function editsOnType(
  file: BoundFile,
  offset: number,
  typed: string,
  options: FormattingOptions,
): TextEdit[] {
  const span = typed === '}' ? closedBlock(file, offset) : lineBefore(file, offset);
  if (!span) return [];
  return gapEdits(file, options)
    .filter((e) => e.end >= span.start && e.end <= span.end)
    .map((e) => ({ range: rangeOf(file, e), newText: e.text }));
}

function closedBlock(file: BoundFile, offset: number): { start: number; end: number } | undefined {
  let among = file.blocks;
  for (;;) {
    const block = among.find((b) => b.span.start <= offset && offset <= b.span.end);
    if (!block) return undefined;
    if (block.bodySpan?.end === offset) return { start: lineStart(file, block.span.start), end: offset };
    among = block.blocks;
  }
}

/** The white space of the line above the cursor, its line break not included. */
function lineBefore(file: BoundFile, offset: number): { start: number; end: number } | undefined {
  const here = lineStart(file, offset);
  if (here === 0) return undefined;
  const end = file.text.slice(0, here).replace(/\r\n$|\r$|\n$/, '').length;
  return { start: lineStart(file, end), end };
}

const lineStart = (file: BoundFile, offset: number): number =>
  documentOf(file).offsetAt({ line: documentOf(file).positionAt(offset).line, character: 0 });

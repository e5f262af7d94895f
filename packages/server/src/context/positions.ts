import type { BoundFile } from '@cribwright/language';
import type { Span } from '@cribwright/syntax/internal';
import type { Position, Range } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';

const documents = new WeakMap<BoundFile, TextDocument>();

/** The file as a text document: converts between offsets and lines. Made once per version. */
export function documentOf(file: BoundFile): TextDocument {
  const known = documents.get(file);
  if (known) return known;
  const made = TextDocument.create(file.uri, 'cribwright', file.version, file.text);
  documents.set(file, made);
  return made;
}

export const rangeOf = (file: BoundFile, { start, end }: Span): Range => ({
  start: documentOf(file).positionAt(start),
  end: documentOf(file).positionAt(end),
});

export const offsetAt = (file: BoundFile, position: Position): number => documentOf(file).offsetAt(position);

export const spanOf = (file: BoundFile, range: Range): Span => ({
  start: offsetAt(file, range.start),
  end: offsetAt(file, range.end),
});

/** Whether a cursor at the offset touches the span. It touches both ends. */
export const touches = ({ start, end }: Span, offset: number): boolean => start <= offset && offset <= end;

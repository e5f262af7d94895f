import type { BoundFile } from '../bound/bound-file.js';
import { cellsOf } from './cells.js';
import { type GapEdit, layOutText } from './layout.js';

/** What a line inside a block starts with. */
export interface Indenting {
  /** Spaces, or else tabs. */
  readonly insertSpaces: boolean;
  readonly tabSize: number;
}

/** The white space to change, in order. None where the layout is broken. */
export function gapEdits(file: BoundFile, { insertSpaces, tabSize }: Indenting): readonly GapEdit[] {
  if (file.brokenLayout) return [];
  const indent = insertSpaces ? ' '.repeat(Math.min(8, Math.max(1, tabSize))) : '\t';
  return layOutText(file.text, file.statements, { indent, cells: cellsOf(file) });
}

/** The whole text laid out, as a command line wants it. Unchanged where the layout is broken. */
export function formatted(file: BoundFile, options: Indenting = { insertSpaces: true, tabSize: 2 }): string {
  let text = '';
  let from = 0;
  for (const edit of gapEdits(file, options)) {
    text += file.text.slice(from, edit.start) + edit.text;
    from = edit.end;
  }
  return text + file.text.slice(from);
}

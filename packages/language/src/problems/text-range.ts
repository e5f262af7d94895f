import type { Range } from 'vscode-languageserver-types';

/** A place in a file: lines and characters counted from 0, as editors count. */
export interface TextRange {
  readonly uri: string;
  readonly range: Range;
}

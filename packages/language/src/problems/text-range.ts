import type { Range } from 'vscode-languageserver-types';

export interface TextRange {
  readonly uri: string;
  readonly range: Range;
}

import type { Message } from '@cribwright/engine';
import type { Span } from '../grammar/syntax.js';

/** Something wrong with the text itself. The engine's findings speak of the plan; these speak of the writing. */
export interface LanguageProblem {
  /** Stable, kebab-case: `unknown-name`, `unit-missing`. */
  readonly code: string;
  /** `unused` is shown faded, and stops nothing. */
  readonly severity: 'error' | 'warning' | 'note' | 'unused';
  readonly message: Message;
  readonly span: Span;
  readonly fixes: readonly TextFix[];
  readonly related: readonly { readonly uri: string; readonly span: Span; readonly message: Message }[];
}

export interface TextFix {
  readonly title: Message;
  readonly edits: readonly TextChange[];
  /** Safe ones may be applied together, unasked. */
  readonly safe: boolean;
}

/** In offsets of the file that the problem stands in. An empty span inserts. */
export interface TextChange {
  readonly span: Span;
  readonly text: string;
}

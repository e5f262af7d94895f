import type { Message } from '@cribwright/messages';
import type { Span } from '@cribwright/syntax/internal';
import type { Kind } from '../kind/kind.js';
import { codeOf, type ProblemHoles, type ProblemKey, problemMessage } from './problem-message.js';

/** Something wrong with the text itself. The engine's findings speak of the plan; these speak of the writing. */
export interface LanguageProblem {
  /** Stable, kebab-case: `unknown-name`, `unit-missing`. */
  readonly code: string;
  /** `unused` is shown faded, and stops nothing. */
  readonly severity: 'error' | 'warning' | 'note' | 'unused';
  readonly message: Message;
  readonly span: Span;
  readonly fixes: readonly TextFix[];
  /** Of a name that is not known: what it should name. */
  readonly about?: readonly Kind[];
  readonly related: readonly { readonly uri: string; readonly span: Span; readonly message: Message }[];
}

/** A change that would put a problem of the text right. */
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

/** A problem in the words of `messages.*.ftl`. An error unless said otherwise. */
export const problem = <K extends ProblemKey>(
  key: K,
  span: Span,
  holes: ProblemHoles<K>,
  rest: Partial<Pick<LanguageProblem, 'severity' | 'fixes' | 'related' | 'about'>> = {},
): LanguageProblem => ({
  code: codeOf(key),
  severity: rest.severity ?? 'error',
  message: problemMessage(key, holes),
  span: plain(span),
  fixes: rest.fixes ?? [],
  related: rest.related ?? [],
  ...(rest.about ? { about: rest.about } : {}),
});

/** A fix that replaces one stretch of text. */
export const replace = (title: Message, span: Span, text: string, safe = false): TextFix => ({
  title,
  edits: [{ span: plain(span), text }],
  safe,
});

/** A span alone, where more was given: a term is a span too. */
const plain = ({ start, end }: Span): Span => ({ start, end });

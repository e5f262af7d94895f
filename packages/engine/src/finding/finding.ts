import type { Phrase } from '@cribwright/messages';
import type { Figure } from '../figure/figure.js';
import type { Ref } from '../model/ref.js';
import type { Message } from './message.js';

/**
 * - `danger`: someone may be hurt. Exit code 1.
 * - `warning`: check it again before relying on it.
 * - `note`: worth knowing.
 */
export type Severity = 'danger' | 'warning' | 'note';

export interface Finding {
  /** The rule's id, `crib-height`. */
  readonly rule: string;
  readonly severity: Severity;
  /** What is unsafe. */
  readonly subject: Ref;
  /** The line that causes it. */
  readonly at: Ref;
  readonly message: Message;
  readonly figures: readonly Figure[];
  readonly related: readonly { readonly at: Ref; readonly message: Message }[];
  readonly fixes: readonly Fix[];
  /** The end of the range, the case or the stage that governs, in words. */
  readonly governs?: Phrase;
  /** Set where a reviewer accepted it, and the acceptance has not run out. */
  readonly accepted?: { readonly by: string; readonly reason: string; readonly until: string };
  /** The check could not run. Shown loudly; never counts as passed. */
  readonly couldNotRun?: boolean;
}

/** What would make it right, computed by the engine. */
export interface Fix {
  readonly title: Message;
  readonly edits: readonly PlanEdit[];
  /** Safe ones may be applied together, unasked. */
  readonly safe: boolean;
}

/** A change to the plan's text, said without knowing the text. `text` is in the plan language. */
export type PlanEdit =
  | { readonly kind: 'set'; readonly at: Ref; readonly text: string }
  | { readonly kind: 'insert'; readonly into: Ref; readonly text: string }
  | { readonly kind: 'remove'; readonly at: Ref };

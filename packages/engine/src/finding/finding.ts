import type { Figure, Message, Phrase } from '@cribwright/messages';
import type { PlanEdit, Ref } from '@cribwright/model';

/**
 * - `danger`: someone may be hurt. Exit code 1.
 * - `warning`: check it again before relying on it.
 * - `note`: worth knowing.
 */
export type Severity = 'danger' | 'warning' | 'note';

/** Something that a rule found on a plan. */
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

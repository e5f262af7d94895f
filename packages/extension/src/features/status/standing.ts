/** How a plan stands, said in one line. */
export interface Standing {
  readonly kind:
    | 'danger'
    | 'not run'
    | 'warning'
    | 'unread'
    | 'waiting'
    | 'accepted'
    | 'clear'
    | 'no plan'
    | 'not checked';
  readonly count: number;
  /** The worst finding, in its own words. */
  readonly worst: string | undefined;
}

interface Counts {
  readonly plans: number;
  readonly danger: number;
  readonly warning: number;
  readonly note: number;
  readonly accepted: number;
  readonly notRun: number;
  /** A heavy check is still being worked out. */
  readonly pending: boolean;
  /** Loads, and all that hangs on one, are among it. */
  readonly loads?: 'pending';
}

/**
 * The worst thing known of a file. Good is only said when every check of some plan ran and none found anything: not
 * before the first answer, not while a check is at work, not while the text cannot be read, and not of a file without
 * a plan.
 *
 * @param counts of the engine's findings; `waiting` before the answer for the text as it stands, `not checked` where
 *   there will be none
 * @param seen what the editor underlines; severity 0 is an error, 1 a warning
 */
export const standingOf = (
  counts: Counts | 'waiting' | 'not checked',
  seen: readonly { readonly severity: number; readonly message: string }[],
): Standing => {
  if (typeof counts === 'string') return { kind: counts, count: 0, worst: undefined };
  const errors = seen.filter((d) => d.severity === 0);
  const warnings = seen.filter((d) => d.severity === 1);
  const worst = [...seen].sort((a, b) => a.severity - b.severity)[0]?.message;
  if (counts.danger > 0) return { kind: 'danger', count: counts.danger, worst };
  if (errors.length > 0) return { kind: 'unread', count: errors.length, worst };
  if (counts.loads === 'pending') return { kind: 'waiting', count: 0, worst };
  if (counts.notRun > 0) return { kind: 'not run', count: counts.notRun, worst };
  const toLookAt = Math.max(counts.warning, warnings.length);
  if (toLookAt > 0) return { kind: 'warning', count: toLookAt, worst };
  if (counts.plans === 0) return { kind: 'no plan', count: 0, worst };
  if (counts.pending) return { kind: 'waiting', count: 0, worst };
  return { kind: counts.accepted > 0 ? 'accepted' : 'clear', count: counts.accepted, worst };
};

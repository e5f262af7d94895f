import type { Finding } from './finding.js';

/** How many findings of each kind there are. */
export interface Tally {
  readonly danger: number;
  readonly warning: number;
  readonly note: number;
  /** Findings that a reviewer accepted, and whose date has not passed. They are in no other count. */
  readonly accepted: number;
  /** Checks that could not run, accepted or not. They are in no other count. */
  readonly notRun: number;
}

/** What a tally needs to know of a finding; a fault of the text has no more than a severity. */
export type Counted = Pick<Finding, 'accepted' | 'couldNotRun'> & { readonly severity: string };

/**
 * Counts findings, each once: one that could not run first, then one that was accepted, then by its severity.
 *
 * @param unread the text has errors: what was not read holds at least one check that could not run
 */
export function tally(findings: readonly Counted[], unread = false): Tally {
  const ran = findings.filter((f) => f.couldNotRun !== true);
  const open = ran.filter((f) => f.accepted === undefined);
  const count = (severity: Finding['severity']) => open.filter((f) => f.severity === severity).length;
  return {
    danger: count('danger'),
    warning: count('warning'),
    note: count('note'),
    accepted: ran.length - open.length,
    notRun: Math.max(findings.length - ran.length, unread ? 1 : 0),
  };
}

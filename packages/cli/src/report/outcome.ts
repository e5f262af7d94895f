import { type Tally as FindingTally, tally as tallyFindings } from '@cribwright/engine';
import type { CheckReport } from './report.js';

/** How a run ended, as the exit code says it. */
export type ExitCode = 0 | 1 | 2;

export interface Tally extends FindingTally {
  readonly plans: number;
  readonly unreadable: number;
}

/** Counts what a run found. A text error counts as a danger: what it hides was not checked. */
export function tally(report: CheckReport): Tally {
  const plans = report.files.flatMap((f) => f.plans);
  const findings = plans.flatMap((p) => p.findings.map((f) => f.finding));
  const problems = report.files.flatMap((f) => f.problems);
  return {
    plans: plans.length,
    ...tallyFindings([...findings, ...problems]),
    unreadable: report.unreadable.length,
  };
}

/** Whether a plan of the run was not read whole. */
export const isPartial = (report: CheckReport): boolean =>
  report.files.some((f) => f.plans.some((p) => p.reply.partial));

/** Whether the text of some file has errors, or a plan was not read whole. What is written of it may lack a part. */
export const hasErrors = (report: CheckReport): boolean =>
  isPartial(report) || report.files.some((f) => f.problems.some((p) => p.severity === 'danger'));

/**
 * The exit code, without a unit. 0: nothing unsafe was found, every check ran and every plan was read whole. 1:
 * something is unsafe, or the text has errors. 2: a file could not be read, or a check could not run and nothing worse
 * was found.
 */
export function exitCode(report: CheckReport): ExitCode {
  const t = tally(report);
  if (t.unreadable > 0) return 2;
  if (t.danger > 0) return 1;
  return t.notRun > 0 || isPartial(report) ? 2 : 0;
}

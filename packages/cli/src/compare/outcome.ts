import type { Comparison, FindingChange, PlanChange } from '@cribwright/workspace';
import type { ReadVersion } from './versions.js';

/** Everything that a comparison prints. */
export interface CompareReport {
  /** As named on the command line. */
  readonly before: string;
  readonly after: string;
  readonly comparison: Comparison;
  readonly unreadable: ReadVersion['unreadable'];
}

/** Whether a plan is less safe than it was: a danger or a check that could not run is new, a limit of
 * its policy is looser, or it is no longer whole. */
export const isWorse = ({ before, after, findings, limits }: PlanChange): boolean =>
  after !== undefined &&
  (findings.some(isWorseFinding) ||
    limits.some((l) => l.looser === true) ||
    (after.verdict !== 'no danger found' && (before === undefined || before.verdict === 'no danger found')) ||
    (after.partial && before?.partial !== true));

/** A danger, or a check that could not run, which was not there or was accepted before. */
export const isWorseFinding = ({ kind, severity, couldNotRun }: FindingChange): boolean =>
  (severity === 'danger' || couldNotRun) &&
  (kind === 'new' || kind === 'worse' || kind === 'no longer accepted');

/** 0: no plan is less safe than it was. 1: some plan is. 2: something could not be read, so that not all was compared. */
export const compareExitCode = ({ comparison, unreadable }: CompareReport): 0 | 1 | 2 =>
  unreadable.length > 0 ? 2 : comparison.plans.some(isWorse) ? 1 : 0;

import type { FileReport, LocatedProblem } from './report.js';

/** Problems of one file's text that are listed one by one. More than these help nobody. */
export const mostProblems = 30;

/** Those that are listed, the worst kept first where there are too many, and how many are left out. */
export function shownProblems({ problems }: Pick<FileReport, 'problems'>): {
  readonly shown: readonly LocatedProblem[];
  readonly leftOut: number;
} {
  if (problems.length <= mostProblems) return { shown: problems, leftOut: 0 };
  const worst = [...problems].sort(
    (a, b) => Number(b.severity === 'danger') - Number(a.severity === 'danger'),
  );
  return { shown: worst.slice(0, mostProblems), leftOut: problems.length - mostProblems };
}

import type { Problem } from '../workspace/checked.js';
import { problemName } from './unsafe-problem.js';

/** Share by which a figure must move to count: less is the last digit of a solver. */
const leastMove = 0.02;

/** Whether the first figure of a finding, a demand or what is held, is better than it was. */
export function isNearer(problem: Problem, after: readonly Problem[]): boolean {
  const before = problem.finding?.figures[0];
  const now = after.find((p) => problemName(p) === problemName(problem))?.finding?.figures[0];
  if (before?.value === undefined || now?.value === undefined || before.key !== now.key) return false;
  return before.rounding === 'down'
    ? now.value.low > before.value.low + leastMove * Math.abs(before.value.low)
    : now.value.high < before.value.high - leastMove * Math.abs(before.value.high);
}

/** Two computed numbers closer than this share of the larger one are the same number: only arithmetic differs. */
const TOLERANCE = 1e-9;

/**
 * -1 where `a` is less, 0 where both are the same, 1 where `a` is more. Both are in one unit.
 *
 * @param tolerance share of the larger up to which two numbers are the same
 */
export function compare(a: number, b: number, tolerance = TOLERANCE): -1 | 0 | 1 {
  if (a === b || Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b))) return 0;
  return a < b ? -1 : 1;
}

/** True where a demand is above its limit by more than arithmetic can account for. Both are in one unit. */
export const exceeds = (demand: number, limit: number): boolean => compare(demand, limit) > 0;

import type { Dimension } from './dimension.js';
import type { Quantity } from './quantity.js';

/** Standard gravity in SI: m/s², exact (NIST SP 811 (2008), 3rd CGPM 1901). */
export const STANDARD_GRAVITY = 9.80665;

/** Weight in N of a mass in kg at standard gravity. */
export const weightOf = (mass: number): number => mass * STANDARD_GRAVITY;

/** Mass in kg of a weight in N at standard gravity. */
const massOf = (weight: number): number => weight / STANDARD_GRAVITY;

const weighed: Partial<Record<Dimension, Dimension>> = { mass: 'force', density: 'unit weight' };

/**
 * The same thing as the wanted dimension, where standard gravity joins the two: a mass as a weight, a density
 * as a weight for each volume, and back. `undefined` where gravity does not join them. `byGravity` says whether
 * gravity was used, so that a figure can say so.
 */
export function across(
  q: Quantity,
  wanted: Dimension,
): { readonly quantity: Quantity; readonly byGravity: boolean } | undefined {
  if (q.dimension === wanted) return { quantity: q, byGravity: false };
  if (weighed[q.dimension] === wanted) {
    return { quantity: { value: weightOf(q.value), dimension: wanted }, byGravity: true };
  }
  if (weighed[wanted] === q.dimension) {
    return { quantity: { value: massOf(q.value), dimension: wanted }, byGravity: true };
  }
  return undefined;
}

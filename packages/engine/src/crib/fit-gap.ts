import type { Interval } from '@cribwright/model';

/** Courses, and shims on them, that leave a gap which the wedges close. */
export interface Fit {
  readonly courses: number;
  /** The least shims that do, m; zero where none are needed. */
  readonly shims: number;
  /** The most shims under which the wedges still go in, m. */
  readonly mostShims: number;
  /** What the wedges are then left to close, m. */
  readonly gap: Interval;
}

/**
 * How to fill the room from the base up to the captured part: as many courses as go in, then shims, then wedges.
 * `undefined` where the limits on shims and on all packing leave no way. Lengths m.
 *
 * @param room from what the crib stands on up to what it captures.
 * @param closes the least and the most that its wedges close; both zero without any.
 */
export function fitGap(
  room: Interval,
  depth: number,
  closes: Interval,
  limits: { readonly shims: number; readonly packing: number },
): Fit | undefined {
  if (!(depth > 0)) return undefined;
  const courses = Math.floor((room.low - closes.low) / depth + 1e-9);
  const left = { low: room.low - courses * depth, high: room.high - courses * depth };
  const shims = Math.max(0, left.high - closes.high);
  const mostShims = Math.min(left.low - closes.low, limits.shims);
  if (courses < 1 || shims > mostShims + 1e-6 || left.high > limits.packing + 1e-6) return undefined;
  return { courses, shims, mostShims, gap: { low: left.low - shims, high: left.high - shims } };
}

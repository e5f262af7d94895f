import type { Timber } from '@cribwright/model';

/**
 * Of one line of crossings from the ground up, N/m: each course squeezes perpendicular to grain over one crossing,
 * k = E⊥ A / d, and n courses lie in series.
 */
export function crossingStiffness(timber: Timber, courses: number): number {
  const one = (timber.modulusAcross * timber.width ** 2) / timber.depth;
  return one / Math.max(1, courses);
}

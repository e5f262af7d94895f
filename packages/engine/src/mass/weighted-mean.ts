import type { Interval } from '@cribwright/model';

export interface Weighed {
  readonly weight: Interval;
  readonly at: Interval;
}

/**
 * Least and greatest of Σ w·x / Σ w as every weight and place runs over its range.
 *
 * The mean is a ratio of two linear functions of each weight, so its extremes lie at ends of the ranges; and at the
 * greatest, all that lies beyond the mean is at its heaviest and all before it at its lightest. So with the places
 * sorted, one of n + 1 cuts gives it: exact, no search over 2ⁿ corners.
 */
export function weightedMean(items: readonly Weighed[]): Interval | undefined {
  const greatest = extreme(items.map(({ weight, at }) => ({ weight, x: at.high })));
  const least = extreme(items.map(({ weight, at }) => ({ weight, x: -at.low })));
  return greatest === undefined || least === undefined ? undefined : { low: -least, high: greatest };
}

function extreme(items: readonly { readonly weight: Interval; readonly x: number }[]): number | undefined {
  const sorted = [...items].sort((a, b) => a.x - b.x);
  let best: number | undefined;
  for (let cut = 0; cut <= sorted.length; cut++) {
    let weight = 0;
    let moment = 0;
    sorted.forEach((item, i) => {
      const w = i < cut ? item.weight.low : item.weight.high;
      weight += w;
      moment += w * item.x;
    });
    if (weight > 0 && (best === undefined || moment / weight > best)) best = moment / weight;
  }
  return best;
}

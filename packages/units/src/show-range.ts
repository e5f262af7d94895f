import type { Dimension } from './dimension.js';
import { type ShowOptions, show } from './show.js';

/**
 * A range as a reader sees it: `36,000 to 42,000 lb`; one number where both ends print the same.
 *
 * The range is never printed narrower than it is: its low end goes down and its high end up. The exception is a
 * capacity or a limit (`down`), whose high end goes down too.
 */
export function showRange(
  range: { readonly low: number; readonly high: number },
  dimension: Dimension,
  unit: string,
  options: ShowOptions,
): string {
  if (range.low === range.high) return show(range.low, dimension, unit, options);
  const ends = options.rounding;
  const low = show(range.low, dimension, unit, { ...options, rounding: ends === 'nearest' ? ends : 'down' });
  const high = show(range.high, dimension, unit, options);
  if (low === high) return high;
  const name = /^[-\d,.]+( .+)$/.exec(high)?.[1];
  const bare =
    name !== undefined && !/\d/.test(name) && low.endsWith(name) ? low.slice(0, -name.length) : low;
  return `${bare} to ${high}`;
}

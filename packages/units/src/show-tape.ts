import { compare } from './compare.js';
import { type Rounding, roundTo } from './rounding.js';
import { group } from './show.js';
import { type ShownPair, showPair } from './show-pair.js';

/** One inch, m. Exact by definition (NIST SP 811, B.8). */
const inch = 0.0254;
/** A US tape is marked in sixteenths of an inch. */
const marks = 16;

/** How a length is printed as a tape reads. */
export interface TapeOptions {
  /** Which way the last mark may move; never toward danger. */
  readonly rounding: Rounding;
  /** Feet and inches from one foot up (`3 ft 6 3/4 in`); left out, inches alone (`42 3/4 in`). */
  readonly feet?: boolean;
}

/**
 * A length as a US tape reads: `38 1/2 in`, `3 ft 6 3/4 in`, to the nearest 1/16 in.
 *
 * A length smaller than a mark is never shown as zero: it prints as one mark where it is rounded up, else with
 * decimals.
 *
 * @param meters finite; `not known` otherwise.
 */
export function showTape(meters: number, options: TapeOptions): string {
  if (!Number.isFinite(meters)) return 'not known';
  const sixteenths = tapeMarks(meters, options.rounding);
  if (!Number.isInteger(sixteenths)) return `${group(roundTo(meters / inch, 0.001, options.rounding))} in`;
  const size = Math.abs(sixteenths);
  const whole = Math.floor(size / marks);
  const feet = options.feet === true ? Math.floor(whole / 12) : 0;
  const inches = whole - feet * 12;
  const part = fraction(size % marks);
  const rest = [inches === 0 && part !== '' ? '' : group(inches), part].filter((t) => t !== '').join(' ');
  const words = [feet === 0 ? '' : `${group(feet)} ft`, feet > 0 && rest === '0' ? '' : `${rest} in`];
  return `${sixteenths < 0 ? '-' : ''}${words.filter((t) => t !== '').join(' ')}`;
}

/** A range as a tape reads, never narrower than it is; of a limit (`down`) the high end goes down too. */
export function showTapeRange(
  range: { readonly low: number; readonly high: number },
  options: TapeOptions,
): string {
  if (range.low === range.high) return showTape(range.low, options);
  const low = showTape(range.low, {
    ...options,
    rounding: options.rounding === 'nearest' ? 'nearest' : 'down',
  });
  const high = showTape(range.high, options);
  if (low === high) return high;
  const bare = / ft /.test(low) || / ft/.test(high) ? low : low.replace(/ in$/, '');
  return `${bare} to ${high}`;
}

/**
 * A length and its limit, m, as a tape reads, in the order in which they are. Where both fall on one mark, decimals
 * tell them apart.
 */
export function showTapePair(
  value: number,
  limit: number,
  options: { readonly limit: 'most' | 'least'; readonly feet?: boolean },
): ShownPair {
  const order = compare(value, limit);
  const most = options.limit === 'most';
  const feet = options.feet === true;
  const forValue: TapeOptions = { rounding: order === 0 ? 'nearest' : most ? 'up' : 'down', feet };
  const forLimit: TapeOptions = { rounding: order === 0 ? 'nearest' : most ? 'down' : 'up', feet };
  const printed = Math.sign(tapeMarks(value, forValue.rounding) - tapeMarks(limit, forLimit.rounding));
  return printed === order
    ? { value: showTape(value, forValue), limit: showTape(limit, forLimit) }
    : showPair(value, limit, 'length', 'in', { limit: options.limit });
}

const tapeMarks = (meters: number, rounding: Rounding) => roundTo((meters / inch) * marks, 1, rounding);

/** `1/2` for eight sixteenths; nothing for none. */
function fraction(sixteenths: number): string {
  if (sixteenths === 0) return '';
  let [top, bottom] = [sixteenths, marks];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}

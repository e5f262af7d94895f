import { compare } from './compare.js';
import type { Dimension } from './dimension.js';
import { type ShowOptions, show, shownValue } from './show.js';

/** A value and its limit as they are printed, each with its unit. */
export interface ShownPair {
  readonly value: string;
  readonly limit: string;
}

/** As many more digits as this are tried before two numbers are taken as the same. */
const MOST_DIGITS = 9;

/**
 * A value and its limit, printed so that the reader sees the same order as the numbers have: a demand above its
 * capacity never prints as under or equal, and one below never prints as above. Digits are added only where needed.
 * `value` and `limit` are in SI.
 *
 * @param options `limit` is `most` where the value must not be above it (a load and a capacity), `least` where it must
 *   not be below it (an overhang)
 */
export function showPair(
  value: number,
  limit: number,
  dimension: Dimension,
  unit: string,
  options: {
    readonly limit?: 'most' | 'least';
    readonly system?: 'us' | 'si';
    readonly significant?: number;
  } = {},
): ShownPair {
  const most = options.limit !== 'least';
  const system = {
    ...(options.system === undefined ? {} : { system: options.system }),
    ...(options.significant === undefined ? {} : { significant: options.significant }),
  };
  const order = compare(value, limit);
  // The same number twice must read as the same number: then neither is moved toward safety.
  const forValue: ShowOptions = { rounding: order === 0 ? 'nearest' : most ? 'up' : 'down', ...system };
  const forLimit: ShowOptions = { rounding: order === 0 ? 'nearest' : most ? 'down' : 'up', ...system };
  const printedOrder = (digits?: number) =>
    Math.sign(
      shownValue(value, dimension, unit, withDigits(forValue, digits)) -
        shownValue(limit, dimension, unit, withDigits(forLimit, digits)),
    );
  let digits: number | undefined;
  if (printedOrder() !== order) {
    digits = 0;
    while (digits < MOST_DIGITS && printedOrder(digits) !== order) digits++;
  }
  return {
    value: show(value, dimension, unit, withDigits(forValue, digits)),
    limit: show(limit, dimension, unit, withDigits(forLimit, digits)),
  };
}

const withDigits = (options: ShowOptions, digits: number | undefined): ShowOptions =>
  digits === undefined ? options : { ...options, digits };

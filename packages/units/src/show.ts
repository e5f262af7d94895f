import type { Dimension } from './dimension.js';
import { findUnit } from './find-unit.js';
import { fromSI, toSI } from './quantity.js';
import { type Rounding, roundTo } from './rounding.js';
import { inSystem, usualUnit } from './system.js';
import type { Unit } from './unit.js';

export type { Rounding } from './rounding.js';

/** How a number is printed. */
export interface ShowOptions {
  /**
   * Which way the last digit may move: a demand or a height `up`, a capacity or a limit `down`, so that rounding
   * never goes toward danger. `nearest` only where neither way is.
   */
  readonly rounding: Rounding;
  /** Digits after the point; left out, as many as the unit is worth (0.1 in, 1 lb). */
  readonly digits?: number;
  /**
   * For numbers inside a sum that a reader follows on paper: never fewer than four digits that count, so that the
   * printed numbers multiply out. Use it with `nearest`.
   */
  readonly workings?: boolean;
  /**
   * At most this many digits that count, where the unit would give more: a computed load is not known to the pound.
   */
  readonly significant?: number;
  /** The reader's system. The unit is changed to its counterpart where it belongs to the other one. */
  readonly system?: 'us' | 'si';
}

/**
 * A number in SI as a reader sees it: `49 in`, `38.5 in`, `3 ft 4 in`, `24,000 lb`, `60 deg`, `12 %`.
 *
 * @param unit a unit id, `ft in` for feet with inches, or `us` or `si` for the reader's usual unit.
 *   A unit of another dimension falls back to the usual one, so that a wrong unit never labels a number.
 * @returns `not known` where the value is not a finite number: unknown is never shown as zero.
 */
export function show(value: number, dimension: Dimension, unit: string, options: ShowOptions): string {
  if (!Number.isFinite(value)) return 'not known';
  const id = displayUnit(unit, dimension, options.system);
  if (id === 'ft in') return feetAndInches(value, options);
  const found = findUnit(id);
  if (found === undefined) return group(roundTo(value, stepOf(found, value, options), options.rounding));
  const shown = fromSI(value, found);
  const text = group(roundTo(shown, stepOf(found, shown, options), options.rounding));
  return `${text} ${found.id}`;
}

/** The unit id that a number is shown in, given the one asked for. */
export function displayUnit(unit: string, dimension: Dimension, system?: 'us' | 'si'): string {
  if (unit === 'us' || unit === 'si') return usualUnit(dimension, unit);
  const id = system === undefined ? unit : inSystem(unit, system);
  if (id === 'ft in' && dimension === 'length') return id;
  if (id === '' && (dimension === 'ratio' || dimension === 'count')) return id;
  return findUnit(id)?.dimension === dimension ? id : usualUnit(dimension, system ?? 'us');
}

/** The printed number alone, in the unit, as a number: what a reader would copy down. */
export function shownValue(value: number, dimension: Dimension, unit: string, options: ShowOptions): number {
  const id = displayUnit(unit, dimension, options.system);
  const found = findUnit(id === 'ft in' ? 'in' : id);
  const shown = found === undefined ? value : fromSI(value, found);
  return roundTo(shown, stepOf(found, shown, options), options.rounding);
}

function stepOf(
  unit: Unit | undefined,
  shown: number,
  { digits, workings, significant }: ShowOptions,
): number {
  if (digits !== undefined) return 10 ** -digits;
  const usual = usualStep(unit, shown);
  if (significant !== undefined && shown !== 0)
    return Math.max(usual, 10 ** (Math.floor(Math.log10(Math.abs(shown)) + 1e-12) - significant + 1));
  return workings === true && shown !== 0
    ? Math.min(usual, 10 ** (Math.floor(Math.log10(Math.abs(shown))) - 3))
    : usual;
}

/** A per cent from 10 up is worth no decimals; below, one. */
const usualStep = (unit: Unit | undefined, shown: number): number =>
  unit === undefined ? 0.01 : unit.id === '%' && Math.abs(shown) >= 10 ? 1 : unit.step;

function feetAndInches(value: number, options: ShowOptions): string {
  const inch = findUnit('in');
  const foot = findUnit('ft');
  if (inch === undefined || foot === undefined) return 'not known';
  const inches = roundTo(fromSI(value, inch), stepOf(inch, 0, options), options.rounding);
  const size = Math.abs(inches);
  const perFoot = Math.round(fromSI(toSI(1, foot), inch));
  const feet = Math.floor(size / perFoot);
  const rest = roundTo(size - feet * perFoot, stepOf(inch, 0, options), 'nearest');
  const words = [feet === 0 ? '' : `${group(feet)} ft`, rest === 0 && feet > 0 ? '' : `${group(rest)} in`];
  return `${inches < 0 ? '-' : ''}${words.filter((w) => w !== '').join(' ')}`;
}

/** Digits in groups of three: `24,000`. No trailing zeros, no exponent, no minus zero. The number has no unit here. */
export function group(value: number): string {
  if (!Number.isFinite(value)) return 'not known';
  if (Math.abs(value) < 1e-9) return '0';
  const [whole = '0', decimals = ''] = plainDigits(value).split('.');
  return decimals === '' ? inThrees(whole) : `${inThrees(whole)}.${decimals}`;
}

function inThrees(whole: string): string {
  if (whole.includes('e')) return whole;
  const first = whole.startsWith('-') ? 1 : 0;
  let grouped = whole;
  for (let end = whole.length - 3; end > first; end -= 3)
    grouped = `${grouped.slice(0, end)},${grouped.slice(end)}`;
  return grouped;
}

/** Fifteen digits are what a number holds, and twelve decimals are enough; more would print its dust. */
function plainDigits(value: number): string {
  const short = String(value);
  const most = Math.min(12, 14 - Math.max(0, Math.floor(Math.log10(Math.abs(value)))));
  const decimals = short.includes('.') ? short.length - short.indexOf('.') - 1 : 0;
  return decimals <= most && !short.includes('e')
    ? short
    : value.toFixed(Math.max(0, most)).replace(/(\.\d*?)0+$/, '$1');
}

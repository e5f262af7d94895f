/**
 * A value that is known only to lie between two ends, both in SI. An exact value has equal ends.
 * Always `low <= high` and both finite.
 */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** A value that is known exactly, in the unit of the number. */
export const exactly = (value: number): Interval => ({ low: value, high: value });
/** The interval between two values of one unit, in any order. */
export const between = (a: number, b: number): Interval => ({ low: Math.min(a, b), high: Math.max(a, b) });
/** Whether both ends are the same. */
export const isExact = (i: Interval): boolean => i.low === i.high;
/** Least and most of the sum of two values that vary apart from each other. */
export const add = (a: Interval, b: Interval): Interval => ({ low: a.low + b.low, high: a.high + b.high });
/** Least and most of a − b, where the two vary apart from each other. */
export const subtract = (a: Interval, b: Interval): Interval => ({
  low: a.low - b.high,
  high: a.high - b.low,
});
/** Both ends times `k`, a number with any unit or none. Below zero the ends change places. */
export const scale = (i: Interval, k: number): Interval => between(i.low * k, i.high * k);
/** The smallest interval that holds both. */
export const hull = (a: Interval, b: Interval): Interval => ({
  low: Math.min(a.low, b.low),
  high: Math.max(a.high, b.high),
});

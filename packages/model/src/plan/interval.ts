/**
 * A value that is known only to lie between two ends, both in SI. An exact value has equal ends.
 * Always `low <= high` and both finite.
 */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

export const exactly = (value: number): Interval => ({ low: value, high: value });
export const between = (a: number, b: number): Interval => ({ low: Math.min(a, b), high: Math.max(a, b) });
export const isExact = (i: Interval): boolean => i.low === i.high;
export const add = (a: Interval, b: Interval): Interval => ({ low: a.low + b.low, high: a.high + b.high });
export const subtract = (a: Interval, b: Interval): Interval => ({
  low: a.low - b.high,
  high: a.high - b.low,
});
export const scale = (i: Interval, k: number): Interval => between(i.low * k, i.high * k);
/** The smallest interval that holds both. */
export const hull = (a: Interval, b: Interval): Interval => ({
  low: Math.min(a.low, b.low),
  high: Math.max(a.high, b.high),
});

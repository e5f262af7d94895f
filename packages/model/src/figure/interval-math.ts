import { between, type Interval } from '../plan/interval.js';

type Known = Interval | undefined;

/** Runs `f` on every pair of ends. Right where `f` is monotonic in each of its arguments. */
const corners = (a: Known, b: Known, f: (x: number, y: number) => number): Known => {
  if (a === undefined || b === undefined) return undefined;
  const ends = [f(a.low, b.low), f(a.low, b.high), f(a.high, b.low), f(a.high, b.high)];
  return ends.every(Number.isFinite) ? between(Math.min(...ends), Math.max(...ends)) : undefined;
};

/** Arithmetic on values that may be ranges and may be unknown. What is unknown stays unknown. */
export const plus = (a: Known, b: Known): Known => corners(a, b, (x, y) => x + y);
export const times = (a: Known, b: Known): Known => corners(a, b, (x, y) => x * y);
/** Unknown where the divisor may be zero. */
export const over = (a: Known, b: Known): Known =>
  b !== undefined && b.low <= 0 && b.high >= 0 ? undefined : corners(a, b, (x, y) => x / y);
export const each = (a: Known, f: (x: number) => number): Known =>
  a === undefined ? undefined : corners(a, a, (x) => f(x));
export const lesser = (a: Known, b: Known): Known => corners(a, b, Math.min);

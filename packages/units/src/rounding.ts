/** Which way the last printed digit may move. */
export type Rounding = 'up' | 'down' | 'nearest';

/** Arithmetic dust, in printed steps: 23.9999999997 is 24, and 24.0000000003 is not rounded up to 25. */
const DUST = 1e-9;

/**
 * A number moved to a whole number of steps. Numbers that stand on a step but for arithmetic dust stay on it.
 * A number that is not zero is never rounded to zero: its own first digits are kept instead.
 */
export function roundTo(value: number, step: number, rounding: Rounding): number {
  const count = value / step;
  const near = Math.round(count);
  if (Math.abs(count - near) <= DUST * Math.max(1, Math.abs(count))) return onStep(near, step);
  const moved = rounding === 'nearest' ? near : rounding === 'up' ? Math.ceil(count) : Math.floor(count);
  if (moved === 0) return roundTo(value, step / 10, rounding);
  return onStep(moved, step);
}

/** Decimal steps divide exactly, `3 * 0.1` does not. */
const onStep = (count: number, step: number): number => {
  const value = step < 1 ? count / Math.round(1 / step) : count * step;
  return value === 0 ? 0 : value;
};

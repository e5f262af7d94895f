import type { Expression } from '@cribwright/language/internal';
import { group, inch, show } from '@cribwright/units';

/**
 * A dragged length in the words of the one it replaces: in its units, and no finer than a person would place a
 * timber. `undefined` where the old one is no plain number: it is worked out, or a range.
 */
export function writeLength(meters: number, like: Expression): string | undefined {
  if (like.kind === 'compound') return feetAndInches(meters);
  if (like.kind !== 'number' || !like.unit) return undefined;
  const { unit, text } = like.unit;
  if (unit.id === 'ft') return feetAndInches(meters, text);
  const step = steps[unit.id];
  if (step === undefined) return show(meters, 'length', unit.id, { rounding: 'nearest' });
  const size = Number(unit.factor.above) / Number(unit.factor.below);
  const digits = Math.max(0, -Math.floor(Math.log10(step)));
  const value = Number((Math.round(meters / size / step) * step).toFixed(digits));
  return `${group(value)} ${text}`;
}

/** How finely a place is written in each unit. */
const steps: Readonly<Record<string, number>> = { in: 1, m: 0.01, cm: 1, mm: 10 };

/** `22 ft 4 in`; `22 ft` where it comes out even, and `4 in` below a foot. */
function feetAndInches(meters: number, feet = 'ft'): string {
  const inches = Math.round(meters / inch);
  const [whole, rest] = [Math.floor(inches / 12), inches % 12];
  if (whole === 0 && rest > 0) return `${rest} in`;
  return rest === 0 ? `${whole} ${feet}` : `${whole} ${feet} ${rest} in`;
}

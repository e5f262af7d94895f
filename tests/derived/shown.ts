import type { Interval } from '@cribwright/model';
import { findUnit, inch, readQuantity, toSI } from '@cribwright/units';
import { expect } from 'vitest';

// A number may end in the fraction of a tape: `38 1/2 in`, `3 ft 6 13/16 in`, `1/2 in`.
const inches = String.raw`(?:[\d,]+ \d+/\d+|\d+/\d+|[\d,]+(?:\.\d+)?)`;
const quantity = String.raw`-?${inches} (?:ft(?: -?${inches} in)?|in|mm|cm|m|deg)(?![\w²])`;
const shownRange = new RegExp(`(?:(-?${inches})|(${quantity})) to (${quantity})|(${quantity})`);

/** The last digit that a shown number of some unit has, SI. A tape has sixteenths of an inch. */
const stepOf = (text: string): number => {
  if (text.includes('/')) return inch / 16;
  const unit = findUnit(/([a-z]+)$/.exec(text)?.[1] ?? '');
  if (unit === undefined) throw new Error(`no unit in ${text}`);
  return toSI(unit.step, unit);
};

/** A shown length or angle, or a range of it, with what its last digit is worth. SI. */
export function readShown(text: string): (Interval & { readonly step: number }) | undefined {
  const found = shownRange.exec(text);
  if (found === null) return undefined;
  const [, bare, from, to, one] = found;
  const high = to ?? one ?? '';
  const low = from ?? (bare === undefined ? high : `${bare} ${/[a-z]+$/.exec(high)?.[0] ?? ''}`);
  const si = (words: string): number => {
    const negative = words.startsWith('-');
    const read = readQuantity(negative ? words.slice(1) : words);
    if (!read.ok) throw new Error(`cannot read ${words} of ${text}`);
    return negative ? -read.value.value : read.value.value;
  };
  return { low: si(low), high: si(high), step: stepOf(high) };
}

/** A shown number is the derived one, as far as it is printed. */
export function expectShown(text: string, derived: Interval | number | undefined, what: string): void {
  if (derived === undefined) {
    expect(text, what).toContain('not known');
    return;
  }
  const { low, high } = typeof derived === 'number' ? { low: derived, high: derived } : derived;
  const shown = readShown(text);
  if (shown === undefined) throw new Error(`${what}: no length or angle in “${text}”`);
  const room = shown.step * 1.001;
  expect(Math.abs(shown.low - low), `${what}: “${text}”, derived ${low}`).toBeLessThanOrEqual(room);
  expect(Math.abs(shown.high - high), `${what}: “${text}”, derived ${high}`).toBeLessThanOrEqual(room);
}

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { show } from './show.js';
import { showTape, showTapePair, showTapeRange } from './show-tape.js';

const inches = (n: number) => n * 0.0254;

describe('a length as a tape reads', () => {
  it.each([
    [38.5, '38 1/2 in'],
    [49, '49 in'],
    [0.25, '1/4 in'],
    [0, '0 in'],
    [-1.5, '-1 1/2 in'],
  ])('%d in: %s', (n, words) => {
    expect(showTape(inches(n), { rounding: 'nearest' })).toBe(words);
  });

  it.each([
    [42.75, '3 ft 6 3/4 in'],
    [36, '3 ft'],
    [36.5, '3 ft 1/2 in'],
    [11.5, '11 1/2 in'],
  ])('%d in with feet: %s', (n, words) => {
    expect(showTape(inches(n), { rounding: 'nearest', feet: true })).toBe(words);
  });

  it('moves the last mark the safe way only', () => {
    expect(showTape(inches(20.01), { rounding: 'up' })).toBe('20 1/16 in');
    expect(showTape(inches(20.99), { rounding: 'down' })).toBe('20 15/16 in');
    expect(showTape(inches(11.999), { rounding: 'up', feet: true })).toBe('1 ft');
  });

  it('never shows a small length as zero, and says that what is not known is not', () => {
    expect(showTape(inches(0.01), { rounding: 'down' })).toBe('0.01 in');
    expect(showTape(inches(0.01), { rounding: 'up' })).toBe('1/16 in');
    expect(showTape(Number.NaN, { rounding: 'up' })).toBe('not known');
  });

  it('shows a range no narrower than it is', () => {
    expect(showTapeRange({ low: inches(20.01), high: inches(22.01) }, { rounding: 'up' })).toBe(
      '20 to 22 1/16 in',
    );
    expect(showTapeRange({ low: inches(20), high: inches(30) }, { rounding: 'up', feet: true })).toBe(
      '1 ft 8 in to 2 ft 6 in',
    );
  });

  it('prints a height beside its limit in the order in which they are', () => {
    expect(showTapePair(inches(49), inches(24), { limit: 'most' })).toEqual({
      value: '49 in',
      limit: '24 in',
    });
    expect(showTapePair(inches(24.001), inches(24), { limit: 'most' })).toEqual({
      value: '24 1/16 in',
      limit: '24 in',
    });
    expect(showTapePair(inches(24.01), inches(24.02), { limit: 'most' })).toEqual({
      value: '24.01 in',
      limit: '24.02 in',
    });
  });

  it('reads back to within a mark, on the safe side', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.07, max: 900, noNaN: true }), (n) => {
        const up = readBack(showTape(inches(n), { rounding: 'up', feet: true }));
        const down = readBack(showTape(inches(n), { rounding: 'down' }));
        expect(up).toBeGreaterThanOrEqual(n - 1e-6);
        expect(up).toBeLessThan(n + 1 / 16 + 1e-6);
        expect(down).toBeLessThanOrEqual(n + 1e-6);
        expect(down).toBeGreaterThan(n - 1 / 16 - 1e-6);
      }),
    );
  });
});

it('keeps three digits of a computed load, rounded the safe way', () => {
  const load = (n: number, rounding: 'up' | 'down') =>
    show(n * 4.4482216152605, 'force', 'lb', { rounding, significant: 3 });
  expect(load(12_345, 'up')).toBe('12,400 lb');
  expect(load(12_345, 'down')).toBe('12,300 lb');
  expect(load(1000, 'up')).toBe('1,000 lb');
  expect(load(87, 'up')).toBe('87 lb');
});

/** The words as a person with a tape would add them up, in. */
function readBack(words: string): number {
  const feet = Number(/(\d+) ft/.exec(words)?.[1] ?? 0);
  const [, top, bottom] = /(\d+)\/(\d+)/.exec(words) ?? [];
  const whole = Number(/(\d+(?:\.\d+)?)(?: \d+\/\d+)? in/.exec(words.replace(/^.* ft /, ''))?.[1] ?? 0);
  const only = /(^| ft )\d+\/\d+ in/.test(words) ? 0 : whole;
  return feet * 12 + only + (top === undefined ? 0 : Number(top) / Number(bottom));
}

import { between, exactly } from '@cribwright/model';
import { inch } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { fitGap } from './fit-gap.js';

const depth = 3.5 * inch;
const wedges = between(0.5 * inch, 2 * inch);
const limits = { shims: 2 * inch, packing: 4 * inch };
const fit = (low: number, high = low, closes = wedges, most = limits) =>
  fitGap(between(low * inch, high * inch), depth, closes, most);
const inches = (f: ReturnType<typeof fit>) =>
  f && [f.courses, f.shims / inch, f.gap.low / inch, f.gap.high / inch];

// By hand, courses of 3.5 in: 40 in is 11 courses (38.5 in) and 1.5 in for the wedges.
describe('what fills the room under a part', () => {
  it('is courses and wedges where they do', () =>
    expect(inches(fit(40))?.map((v) => Number(v.toFixed(6)))).toEqual([11, 0, 1.5, 1.5]));

  // 42 in: 11 courses leave 3.5 in, of which the wedges close 2 in: 1.5 in of shims.
  it('adds the least shims that leave what the wedges close', () =>
    expect(inches(fit(42))?.map((v) => Number(v.toFixed(6)))).toEqual([11, 1.5, 2, 2]));

  it('finds a fit for every height with courses of 3.5 in, 2 in of shims and wedges of 0.5 to 2 in', () => {
    for (let room = 4; room < 60; room += 1 / 16) {
      const found = fit(room);
      expect(found?.shims ?? 1).toBeLessThanOrEqual(limits.shims + 1e-9);
      const top = (found?.courses ?? 0) * 3.5 + (found?.shims ?? 0) / inch;
      expect(room - top).toBeGreaterThanOrEqual(0.5 - 1e-6);
      expect(room - top).toBeLessThanOrEqual(2 + 1e-6);
    }
  });

  it('finds none where the limit on shims or on packing is lower', () => {
    expect(fit(42, 42, wedges, { ...limits, shims: 1 * inch })).toBeUndefined();
    expect(fit(42, 42, wedges, { ...limits, packing: 3 * inch })).toBeUndefined();
  });

  it('finds none for a range that no wedge covers, or room for no course', () => {
    expect(fit(40, 42)).toBeUndefined();
    expect(fit(3)).toBeUndefined();
  });

  it('fills a known gap by shims alone where there are no wedges', () =>
    expect(inches(fit(40, 40, exactly(0)))?.map((v) => Number(v.toFixed(6)))).toEqual([11, 1.5, 0, 0]));
});

import { describe, expect, it } from 'vitest';
import { crib, foot, inch } from '../testing/sample-plans.js';
import { courseCounts, crossings, narrowWidth, stackHeight, timberCount } from './stack.js';

const box = crib('A', 10 * foot, -3 * foot);
const inches = (value: number) => Math.round((value / inch) * 1e6) / 1e6;

describe('layout of a crib', () => {
  // Common practice, no source: 24 in timbers with 4 in overhangs are 16 in wide outside to outside.
  it('is as wide as its timber less both overhangs', () => expect(inches(narrowWidth(box))).toBe(16));
  it('is as wide as one timber where a course has one', () =>
    expect(inches(narrowWidth({ ...box, layout: { lengthwise: 1, crosswise: 2 } }))).toBe(3.5));
  it('stands as high as its courses', () => expect(inches(stackHeight(box))).toBe(38.5));

  it('numbers contacts front to rear, driver to passenger side', () =>
    expect(crossings(box).map((c) => [c.number, inches(c.x - box.at.x), inches(c.y - box.at.y)])).toEqual([
      [1, -6.25, -6.25],
      [2, -6.25, 6.25],
      [3, 6.25, -6.25],
      [4, 6.25, 6.25],
    ]));

  it('spreads three timbers evenly', () => {
    const nine = crossings({ ...box, layout: { lengthwise: 3, crosswise: 3 } });
    expect(nine).toHaveLength(9);
    expect(nine.slice(0, 3).map((c) => inches(c.y - box.at.y))).toEqual([-6.25, 0, 6.25]);
  });

  it('counts a solid base full: six 3.5 in timbers lie side by side in 24 in', () => {
    const counts = courseCounts(box);
    expect(counts[0]).toEqual({ runs: 'lengthwise', timbers: 6 });
    expect(counts.at(-1)).toEqual({ runs: 'lengthwise', timbers: 2 });
    expect(timberCount(box)).toBe(6 + 10 * 2);
    expect(timberCount({ ...box, base: 'open' })).toBe(22);
  });
});

import { describe, expect, it } from 'vitest';
import { crib, foot, inch } from '../testing/sample-plans.js';
import { courseHeight, coursesOf, crossings, heightWithShims, narrowWidth, timberCount } from './stack.js';

const box = crib('A', 10 * foot, -3 * foot);
const inches = (value: number) => Math.round((value / inch) * 1e6) / 1e6;

describe('layout of a crib', () => {
  // Common practice, no source: 24 in timbers with 4 in overhangs are 16 in wide outside to outside.
  it('is as wide as its timber less both overhangs', () => expect(inches(narrowWidth(box))).toBe(16));
  it('is as wide as one timber where a course has one', () =>
    expect(inches(narrowWidth({ ...box, layout: { lengthwise: 1, crosswise: 2 } }))).toBe(3.5));
  it('stands as high as its courses, and with its shims higher by those', () => {
    expect(inches(courseHeight(box))).toBe(38.5);
    expect(inches(heightWithShims({ ...box, shims: 3 * inch }))).toBe(41.5);
  });

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
    const courses = coursesOf(box);
    expect(courses[0]).toMatchObject({ runs: 'lengthwise', solid: true });
    expect(courses[0]?.offsets).toHaveLength(6);
    expect(courses.at(-1)).toMatchObject({ runs: 'lengthwise', solid: false });
    expect(courses.at(-1)?.offsets.map(inches)).toEqual([-6.25, 6.25]);
    expect(timberCount(box)).toBe(6 + 10 * 2);
    expect(timberCount({ ...box, base: 'open' })).toBe(22);
  });
});

describe('courses', () => {
  it('lie crosswise to each other, the top one as the plan says', () => {
    const courses = coursesOf(box);
    expect(courses.map((c) => c.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    expect(courses.at(-1)?.runs).toBe('lengthwise');
    for (const [i, c] of courses.entries()) expect(c.runs).not.toBe(courses[i + 1]?.runs);
  });

  it('stand 16 in apart outside to outside, for 24 in timbers with 4 in overhangs', () => {
    const [first, last] = coursesOf(box).at(-1)?.offsets ?? [];
    expect(inches((last ?? 0) - (first ?? 0) + box.timber.width)).toBe(16);
  });

  it('have a base course without gaps where it is solid', () => {
    const base = coursesOf(box)[0];
    // Six timbers of 3.5 in side by side on 24 in.
    expect(base?.offsets.length).toBe(6);
    expect((base?.offsets[1] ?? 0) - (base?.offsets[0] ?? 0)).toBeCloseTo(box.timber.width, 9);
  });

  it('are listed as far as they can be told apart, and counted to the last', () => {
    expect(coursesOf({ ...box, courses: 1e9 }).length).toBe(60);
    expect(timberCount({ ...box, base: 'open', courses: 1e9 })).toBe(2e9);
    expect(coursesOf({ ...box, courses: 0 })).toEqual([]);
    expect(timberCount({ ...box, courses: 0 })).toBe(0);
  });
});

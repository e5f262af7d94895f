import { crib, planOf, trailerOnCar } from '@cribwright/engine/testing';
import { describe, expect, it } from 'vitest';
import { inch } from '../text/lengths.js';
import { baseHeight, captureHeight, coursesOf, cribSolids, stackHeight, wedgeGap } from './crib-solids.js';
import { pointsOf } from './project.js';

const a = crib('A', 5, -1);

describe('courses', () => {
  it('lie crosswise to each other, the top one as the plan says', () => {
    const courses = coursesOf(a);
    expect(courses.map((c) => c.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    expect(courses.at(-1)?.runs).toBe('lengthwise');
    for (const [i, c] of courses.entries()) expect(c.runs).not.toBe(courses[i + 1]?.runs);
  });

  it('stand 16 in apart outside to outside, for 24 in timbers with 4 in overhangs', () => {
    const [first, last] = coursesOf(a).at(-1)?.offsets ?? [];
    expect(((last ?? 0) - (first ?? 0) + a.timber.width) / inch).toBeCloseTo(16, 9);
  });

  it('have a base course without gaps where it is solid', () => {
    const base = coursesOf(a)[0];
    // Six timbers of 3.5 in side by side on 24 in.
    expect(base?.offsets.length).toBe(6);
    expect((base?.offsets[1] ?? 0) - (base?.offsets[0] ?? 0)).toBeCloseTo(a.timber.width, 9);
  });

  it('are as many as can be told apart, whatever the text says', () => {
    expect(coursesOf({ ...a, courses: 1e9 }).length).toBe(60);
    expect(coursesOf({ ...a, courses: 0 })).toEqual([]);
  });
});

it('fills the room it says: 24 in square, from the ground to the captured part', () => {
  const plan = planOf({ vehicles: trailerOnCar.vehicles, cribs: [a] });
  const points = cribSolids(a, plan).flatMap(pointsOf);
  const span = (axis: 'x' | 'y' | 'z') =>
    Math.max(...points.map((p) => p[axis])) - Math.min(...points.map((p) => p[axis]));
  expect(span('x') / inch).toBeCloseTo(24, 6);
  expect(span('y') / inch).toBeCloseTo(24, 6);
  expect(stackHeight(a) / inch).toBeCloseTo(38.5, 9);
  expect(captureHeight(a, plan)).toBeCloseTo(40 * inch, 9);
  expect(wedgeGap(a, plan)).toBeCloseTo(1.5 * inch, 9);
  expect(span('z') / inch).toBeCloseTo(40, 6);
});

it('draws no wedge where the gap is wider than wedges close', () => {
  const plan = planOf({ vehicles: trailerOnCar.vehicles, cribs: [a] });
  expect(cribSolids({ ...a, courses: 8 }, plan).some((s) => s.tone === 'wedge')).toBe(false);
  expect(wedgeGap({ ...a, courses: 14 }, plan)).toBeUndefined();
});

it('stands on what it stands on', () => {
  const plan = planOf({});
  expect(baseHeight(a, plan)).toBe(0);
  const on = { kind: 'vehicle', vehicle: 'vehicle/x', part: 'frame', height: { low: 1, high: 1.1 } } as const;
  expect(baseHeight({ ...a, standsOn: on }, plan)).toBe(1.1);
});

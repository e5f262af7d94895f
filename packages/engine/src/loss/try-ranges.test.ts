import { describe, expect, it } from 'vitest';
import { between, exactly, type Interval } from '../model/interval.js';
import { crib, foot, inch, lb, planOf, step, vanTrailer } from '../testing/sample-plans.js';
import { workingsOf } from '../workings/workings.js';

const side = 42.75 * inch;
/** Wedged at the passenger side first, then snug at the driver side. */
const trailer = (
  weight: Interval,
  back: Interval,
  across: Interval,
  places: readonly number[],
  preload: number,
) => {
  const wedges = { pairs: 4, travel: between(0.5 * inch, 2 * inch), preload: preload * lb };
  const far = places.map((x, i) => crib(`A${i}`, x * foot, side, { wedges }));
  const near = places.map((x, i) => crib(`B${i}`, x * foot, -side));
  const ids = (cribs: typeof far) => cribs.map((c) => c.id);
  const z = exactly(6 * foot);
  return workingsOf(
    planOf({
      vehicles: [{ ...vanTrailer, cargo: [], statedWeight: weight, statedCenter: { x: back, y: across, z } }],
      cribs: [...far, ...near],
      steps: [step(1, 'build', ids(far)), step(2, 'build', ids(near))],
    }),
  ).loads();
};

describe('a center of gravity that may be anywhere in a range', () => {
  const weight = exactly(36_000 * lb);
  const [back, across] = [between(23 * foot, 28 * foot), between(-1.4 * foot, 1.4 * foot)];
  const places = [20.5, 41.25, 27.5];
  const most = (x: Interval, y: Interval) =>
    trailer(weight, x, y, places, 260).get('crib/B1')?.load.value?.high ?? Number.NaN;
  const alone = (x: number, y: number) => most(exactly(x), exactly(y));

  it('may load a crib between its ends far more than at any of them, and that is found', () => {
    const ends = [back.low, back.high].flatMap((x) => [across.low, across.high].map((y) => alone(x, y)));
    const inside = Array.from({ length: 41 }, (_, i) =>
      alone(back.low + (i * (back.high - back.low)) / 40, across.low),
    );
    expect(Math.max(...inside)).toBeGreaterThan(1.2 * Math.max(...ends));
    expect(most(back, across)).toBeGreaterThanOrEqual(0.99 * Math.max(...inside));
  });

  it('is named where it is worst', () => {
    const load = trailer(weight, back, across, places, 260).get('crib/B1')?.load;
    expect(load?.governs).toMatch(
      /[\d.]+ % of the way between center farthest to its front and center farthest to its rear/,
    );
  });
});

it('counts what rests of a case that falls elsewhere in the ranges', () => {
  // Its rear axle let down, it goes over backward where its center may lie behind the front axle. Just before that
  // all of it stands on the two ends of that axle: half its weight each.
  const weight = 30_000 * lb;
  const load = trailer(exactly(weight), between(40 * foot, 47.5 * foot), exactly(0), [], 0).get(
    'vehicle/trailer/axle 1/driver',
  )?.load;
  expect(load?.value?.high).toBeGreaterThan(0.4995 * weight);
  expect(load?.value?.high).toBeLessThanOrEqual(0.5 * weight);
  expect(load?.governs).toContain('axle 2: air springs let down');
});

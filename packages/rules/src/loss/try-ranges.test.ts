import { workingsOf } from '@cribwright/engine';
import type { PlanBody } from '@cribwright/engine/internal';
import { endsAlone, jointCorners, type TryPlace, thorough, tryRanges } from '@cribwright/engine/internal';
import { name } from '@cribwright/messages';
import { english } from '@cribwright/messages/testing';
import type { Plan } from '@cribwright/model';
import { between, exactly, type Interval } from '@cribwright/model';
import { crib, foot, inch, lb, planOf, policyWith, step, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { analyzeInSteps } from '../analysis/analyze.js';

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
    expect(english(load?.governs)).toMatch(
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
  expect(english(load?.governs)).toContain('axle 2: air springs deflated');
});

it('of very many ranges tries one place between two stops, and stops asking in the end', () => {
  const bodies: readonly PlanBody[] = Array.from({ length: 13 }, (_, i) => ({
    id: `vehicle/${i}`,
    vehicle: `vehicle/${i}`,
    name: name(`car ${i}`),
    centerHeight: undefined,
    corners: Array.from({ length: 8 }, (__, c) => ({ weight: 1 + c, x: c & 1, y: c & 2, words: [] })),
  }));
  const corners = jointCorners(bodies);
  let places = 0;
  let since = 0;
  const tryPlace: TryPlace = function* () {
    yield* []; // No stop of its own.
    places++;
    since++;
    // No place is like another: whoever looks between them finds no end.
    return { asBuilt: Int32Array.of(places), losses: [] };
  };
  const worst = () => Array.from({ length: Math.min(places, 200) }, (_, i) => i);
  for (const budget of [endsAlone, thorough]) {
    places = 0;
    for (const _stop of tryRanges(corners, bodies, tryPlace, worst, budget)) {
      expect(since).toBeLessThanOrEqual(1);
      since = 0;
    }
    expect(places).toBeGreaterThan(corners.length);
    expect(places).toBeLessThanOrEqual(corners.length + 5 * 400 + budget.edges + budget.near);
  }
});

it('of very many cases at one place stops between them', () => {
  const cribs = Array.from({ length: 30 }, (_, i) => crib(`A${i}`, (4 + 1.5 * i) * foot, -side));
  const stages = cribs.map((c, i) => step(i + 1, 'build', [c.id]));
  const plan = planOf({ vehicles: [vanTrailer], cribs, steps: stages });
  const washedOut = { ...plan, policy: policyWith('ground under cribs', 'may give way') };
  const stops = (p: Plan) => [...analyzeInSteps(p, { endsAlone: true })].length;
  expect(stops(washedOut)).toBeGreaterThan(stops(plan));
});

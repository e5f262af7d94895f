import type { StrutGear } from '@cribwright/model';
import { exactly } from '@cribwright/model';
import { foot, gripping, inch, lb, planOf, policyWith, strut, vanTrailer } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { workingsOf } from '../derived/workings.js';
import { strutPoints } from './strut-points.js';

// A strut at 3-4-5: 48 in of rise on 36 in of run, 60 in long, so that sin θ is 0.8.
const at345 = (preload: number, gear?: StrutGear) =>
  strut('S1', 20 * foot, 49 * inch, 85 * inch, {
    head: { ...strut('S1', 0, 0, 0).head, x: 20 * foot, y: 49 * inch, z: exactly(48 * inch) },
    preload,
    ...(gear === undefined ? {} : { gear }),
  });
const pointOf = (preload: number) => {
  const plan = planOf({
    vehicles: [vanTrailer],
    ground: gripping,
    struts: [at345(preload)],
    policy: policyWith('friction strut base', 1),
  });
  return strutPoints(workingsOf(plan))[0];
};

it('lifts with the upward part of its preload: 1000 lb along 3-4-5 is 800 lb upward', () => {
  expect((pointOf(1000 * lb)?.preload ?? 0) / lb).toBeCloseTo(800, 9);
  expect(pointOf(0)?.preload).toBe(0);
});

it('is left out where neither a strap nor friction holds its base', () => {
  const plan = planOf({
    vehicles: [vanTrailer],
    ground: gripping,
    struts: [at345(0)],
    // cot θ is 0.75: less than that slides.
    policy: policyWith('friction strut base', 0.74),
  });
  expect(strutPoints(workingsOf(plan))).toEqual([]);
});

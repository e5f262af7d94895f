import { planOf, truckOnCar, vanTrailer } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { analyze, analyzeInSteps } from './analyze.js';

it.each([
  ['a sound plan', truckOnCar],
  [
    'a plan of which the push cannot be known',
    planOf({ vehicles: [{ ...vanTrailer, emptyCenterHeight: undefined }] }),
  ],
])('comes to the same as in one go: %s', (_, plan) => {
  for (const push of [true, false]) {
    const steps = analyzeInSteps(plan, { push });
    let stops = 0;
    let step = steps.next();
    for (; step.done !== true; step = steps.next()) stops++;
    expect(step.value).toEqual(analyze(plan, { push }));
    // At least after each rule.
    expect(stops).toBeGreaterThan(30);
  }
});

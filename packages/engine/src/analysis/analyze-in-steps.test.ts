import { expect, it } from 'vitest';
import { planOf, truckOnCar, vanTrailer } from '../testing/sample-plans.js';
import { analyze, analyzeInSteps } from './analyze.js';

it.each([truckOnCar, planOf({ vehicles: [{ ...vanTrailer, emptyCentreHeight: undefined }] })])(
  'comes to the same as in one go',
  (plan) => {
    const steps = analyzeInSteps(plan);
    let stops = 0;
    let step = steps.next();
    for (; step.done !== true; step = steps.next()) stops++;
    expect(step.value).toEqual(analyze(plan, { push: true }));
    expect(stops).toBe(step.value.push?.directions.length ?? 0);
  },
);

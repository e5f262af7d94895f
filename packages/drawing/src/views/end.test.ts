import { trailerOnCar as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { drawn } from '../testing/drawn.js';

const { group, words, shape } = drawn(plan, analyze(plan), { view: 'end' });

it('has the driver side at the left and leans each strut against the body', () => {
  const left = shape('strut/S1', 'shaft');
  const right = shape('strut/S2', 'shaft');
  if (left.kind !== 'line' || right.kind !== 'line') throw new Error('a strut is not a line');
  expect(left.from.x).toBeLessThan(left.to.x);
  expect(right.from.x).toBeGreaterThan(right.to.x);
  expect(left.to.y).toBeLessThan(left.from.y);
});

it('shows the strap from base to base and measures off the centerline', () => {
  expect(group('tie/T1').name).toContain('strap T1');
  expect(words()).toContain('S2, S4: passenger side 7 ft 3 in');
});

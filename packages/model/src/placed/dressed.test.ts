import { expect, it } from 'vitest';
import { fir4x4, inch, policyWith } from '../testing/sample-plans.js';
import { dressed } from './dressed.js';

const eight = { ...fir4x4, nominal: '8x8', width: 7.25 * inch, depth: 7.25 * inch };

// PS 20: timbers of 7 in and more are 3/4 in off dry, 1/2 in off green; the NDS section table has 7.5 in, 56.25 in².
it.each([
  ['dry', 7.25, 52.5625],
  ['green', 7.5, 56.25],
])('an 8×8 is dressed %s', (choice, size, area) => {
  const timber = dressed(eight, policyWith('dressed size of 8x8', choice));
  expect(timber.width / inch).toBeCloseTo(size, 9);
  expect((timber.width * timber.depth) / inch ** 2).toBeCloseTo(area, 9);
});

it('leaves other timbers as they are', () =>
  expect(dressed(fir4x4, policyWith('dressed size of 8x8', 'green'))).toBe(fir4x4));

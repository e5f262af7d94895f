import { crib, fir4x4, foot, lb } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { ownWeight } from './own-weight.js';

// By hand: 10 courses of 2 timbers are 20 pieces. Each piece is 3.5 in by
// 3.5 in by 24 in, 0.17014 ft³, and the sample timber has 545 kg/m³, which is 34.023 lb/ft³ (1 lb/ft³ is 16.018463 kg/m³,
// NIST SP 811, B.8): 5.789 lb a piece.
it('is the weight of all pieces of timber', () => {
  const a = crib('A', 0, 0, { timber: { ...fir4x4, length: 2 * foot }, courses: 10, base: 'open' });
  expect((ownWeight(a).value?.high ?? 0) / lb).toBeCloseTo(20 * 5.789, 1);
});

it('grows with each course', () => {
  const at = (courses: number) => ownWeight(crib('A', 0, 0, { courses })).value?.high ?? 0;
  expect(at(9)).toBeGreaterThan(at(8));
});

import { english } from '@cribwright/messages/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../../testing/check.js';
import { crib, planOf, trailerOnCar, vanTrailer } from '../../testing/sample-plans.js';
import { rule } from './rule.js';

const found = (vehicle: string, part: string) =>
  check(
    rule,
    planOf({
      vehicles: [vanTrailer],
      cribs: [
        crib('A', 0, 0, { captures: [{ vehicle, part, ref: { element: 'crib/A', property: 'captures' } }] }),
      ],
    }),
  ).map((f) => english(f.message));

describe('part-cannot-bear', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));
  it('says why a part may not bear, and which may', () =>
    expect(found(vanTrailer.id, 'kingpin')).toEqual([
      'crib A is to bear on the kingpin of the trailer, which may not bear. It sits in the fifth wheel. Parts that may bear: rail, joists, landing gear.',
    ]));
  it('names a part that is not there', () =>
    expect(found(vanTrailer.id, 'wing')[0]).toContain('the trailer has no such part'));
  it('names a vehicle that is not there', () =>
    expect(found('vehicle/bus', 'rail')[0]).toContain('vehicle/bus, which is not in this plan'));
});

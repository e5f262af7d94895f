import { english } from '@cribwright/messages/testing';
import { crib, planOf, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
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
      'The kingpin of the trailer cannot bear, and crib A captures it. Parts that can bear: rail, joists and landing gear. It sits in the fifth wheel.',
    ]));
  it('names a part that is not there', () =>
    expect(found(vanTrailer.id, 'wing')[0]).toContain('The trailer has no wing, and crib A captures it.'));
  it('names a vehicle that is not there', () =>
    expect(found('vehicle/bus', 'rail')[0]).toContain('vehicle/bus is not in this plan'));
});

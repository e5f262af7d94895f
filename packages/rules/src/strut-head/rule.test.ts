import { english } from '@cribwright/messages/testing';
import { inch, planOf, strut, tractor, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (vehicle: string, part: string, y = -49 * inch) => {
  const s = strut('S1', 4, y, -2);
  return check(
    rule,
    planOf({ vehicles: [vanTrailer, tractor], struts: [{ ...s, head: { ...s.head, vehicle, part } }] }),
  ).map((f) => english(f.message));
};

describe('strut-head', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));
  it('refuses a part that moves', () =>
    expect(found(tractor.id, 'cab floor')[0]).toContain(
      'which moves. Put it on a frame rail or a joist. The cab rides on air springs behind.',
    ));
  it('refuses a part that may not bear', () =>
    expect(found(vanTrailer.id, 'kingpin')[0]).toContain('which cannot bear'));
  it('names what may bear where the part is not there', () =>
    expect(found(vanTrailer.id, 'wing')[0]).toContain('Parts that can bear: rail, joists and landing gear.'));
  it('says by how much a head misses its rail', () =>
    expect(found(vanTrailer.id, 'rail', -40 * inch)[0]).toContain(
      'misses the rail of the trailer by 7 1/2 in',
    ));
});

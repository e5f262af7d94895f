import { english } from '@cribwright/messages/testing';
import type { Strut } from '@cribwright/model';
import { between, exactly } from '@cribwright/model';
import { fir4x4, inch, planOf, policyWith, strut, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const gear: Strut['gear'] = {
  kind: 'timber post',
  name: 'Fir4x4',
  timber: { ...fir4x4, length: 240 * inch },
  plies: 1,
  ref: { element: 'timber/Fir4x4' },
};
/** A post whose head stands straight above its base, so that its length is the height. */
const upright = (low: number, high = low) => {
  const one = strut('S1', 0, 0, 0, { gear });
  return planOf({
    vehicles: [vanTrailer],
    struts: [
      {
        ...one,
        head: {
          ...one.head,
          z: low === high ? exactly(low * inch) : between(low * inch, high * inch),
        },
      },
    ],
  });
};

describe('post-slender', () => {
  // NDS 2018, 3.7.1.4 (from memory): le/d at most 50; 50 × 3.5 in = 175 in.
  it.each([
    [175, 0],
    [175.1, 1],
  ])('a 4×4 of %d in has %i findings', (height, findings) =>
    expect(check(rule, upright(height))).toHaveLength(findings),
  );

  it('says how long a post may be', () => {
    const [found] = check(rule, upright(180));
    expect(english(found?.message)).toBe(
      'Strut S1 (Fir4x4) is 180 in long. Its slenderness is 51.43 (180 in ÷ 3.5 in). The limit is 50. ' +
        'Use a thicker post, or a post of at most 175 in.',
    );
    expect(found?.figures.map((f) => f.key)).toEqual(['slenderness', 'post slenderness', 'length']);
  });

  it('counts the longest end of a range', () => {
    const [found] = check(rule, upright(170, 180));
    expect(english(found?.governs)).toBe('the longest it may be');
    expect(check(rule, upright(160, 170))).toEqual([]);
  });

  it('follows the policy', () =>
    expect(
      check(rule, {
        ...upright(180),
        policy: policyWith('post slenderness', 75),
      }),
    ).toEqual([]));

  it('leaves rated struts alone', () => expect(check(rule, trailerOnCar)).toEqual([]));
});

import { english } from '@cribwright/messages/testing';
import { between } from '@cribwright/model';
import { degree, inch, planOf, strut, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (out: number, change: Parameters<typeof strut>[4] = {}) =>
  check(
    rule,
    planOf({ vehicles: [vanTrailer], struts: [strut('S1', 4, -49 * inch, (-49 - out) * inch, change)] }),
  );

describe('strut-angle', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));

  // By hand: 40 in up and 80 in out is atan(0.5) = 26.565 deg; at 45 deg it must stand 40 in out.
  it('works the angle out from head and base', () => {
    const [finding] = found(80);
    expect(finding?.severity).toBe('danger');
    expect(english(finding?.message)).toBe(
      'Strut S1 is at 26.5 deg to the ground (arctan(40 in ÷ 80 in)). The minimum is 45 deg. A flatter strut pushes out more than up. Set the base 3 ft 4 in out.',
    );
    expect(finding?.fixes[0]?.edits[0]).toMatchObject({ text: '3 ft 4 in out' });
  });

  it('takes 45 degrees as not flatter', () => expect(found(40)).toEqual([]));
  it('warns of one that stands too steep', () => expect(found(5)[0]).toMatchObject({ severity: 'warning' }));
  it('answers for the low end of a head whose height is a range', () => {
    const head = { ...strut('S1', 4, -49 * inch, 0).head, z: between(36 * inch, 44 * inch) };
    expect(english(found(40, { head })[0]?.governs)).toBe('the low end of the head');
  });
  it('says where the angle as written is not the one that is drawn', () => {
    const [finding] = found(30, { statedAngle: 45 * degree });
    expect(english(finding?.message)).toContain(
      'the stated angle is 45 deg. The angle from base to head is 53.1 deg',
    );
    expect(found(30, { statedAngle: 53 * degree })).toEqual([]);
  });
  it('refuses a head that is not above its base', () => {
    const head = { ...strut('S1', 4, -49 * inch, 0).head, z: between(0, 0) };
    expect(english(found(40, { head })[0]?.message)).toContain('the head is not above the base');
  });
});

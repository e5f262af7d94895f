import { english } from '@cribwright/messages/testing';
import { crib, foot, inch, planOf, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (overhang: number) =>
  check(rule, planOf({ vehicles: [vanTrailer], cribs: [crib('A', 19.5 * foot, -1, { overhang })] }));

describe('crib-overhang', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));
  // Common practice, no source: 4 in past each contact.
  it.each([4, 6])('takes %i in', (inches) => expect(found(inches * inch)).toEqual([]));
  it('says by how much an end is short, and sets it right', () => {
    const [finding] = found(3.5 * inch);
    expect(finding?.severity).toBe('danger');
    expect(english(finding?.message)).toContain('overhang the contacts by 3 1/2 in. The minimum is 4 in');
    expect(finding?.fixes[0]?.edits[0]).toMatchObject({ kind: 'set', text: '4 in' });
    expect(finding?.related[0]?.at.property).toBe('least overhang');
  });
  it('never prints a short end as long enough', () =>
    expect(english(found(3.999 * inch)[0]?.message)).toContain(
      'overhang the contacts by 3 15/16 in. The minimum is 4 in',
    ));
  it('warns of a base grown narrow', () => {
    const [finding] = found(7 * inch);
    expect(finding?.severity).toBe('warning');
    expect(english(finding?.message)).toContain('which is now 10 in wide');
  });
});

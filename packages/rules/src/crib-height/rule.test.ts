import { english } from '@cribwright/messages/testing';
import {
  crib,
  inch,
  planOf,
  policyWith,
  tallCrib,
  trailerOnCar,
  vanTrailer,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const side = -42.75 * inch;
const withCrib = (change: Parameters<typeof crib>[3]) =>
  planOf({
    vehicles: [vanTrailer],
    cribs: [crib('A', 234 * inch, side, change)],
  });

describe('crib-height', () => {
  it('passes a crib of 11 courses on four contacts', () => {
    expect(check(rule, trailerOnCar)).toEqual([]);
  });

  // Common practice, no source: 24 in timbers with 4 in overhangs are 16 in wide; on two contacts 1.5 × 16 in.
  it('says 49 in against 24 in for 14 courses on two contacts, and offers 6', () => {
    const [found, ...more] = check(rule, tallCrib);
    expect(more).toEqual([]);
    expect(found?.severity).toBe('danger');
    expect(found?.at).toEqual({ element: 'crib/A', property: 'courses' });
    expect(english(found?.message)).toBe(
      'Crib A is 49 in tall. The limit is 24 in with 2 of 4 contacts loaded (1.5 × 16 in). ' +
        'Use 6 courses, or capture all 4 contacts and use 13 (limit 48 in).',
    );
    expect(found?.fixes[0]?.edits).toEqual([
      {
        kind: 'set',
        at: { element: 'crib/A', property: 'courses' },
        text: '6',
      },
    ]);
  });

  it('offers to capture the rest where that would hold', () => {
    const [found] = check(rule, withCrib({ captures: crib('A', 0, 0).captures.slice(0, 1) }));
    expect(english(found?.message)).toBe(
      'Crib A is 38 1/2 in tall. The limit is 24 in with 2 of 4 contacts loaded (1.5 × 16 in). ' +
        'Capture all 4 contacts (limit 48 in), or use 6 courses.',
    );
    expect(found?.fixes.map((f) => f.edits[0])).toEqual([
      { kind: 'set', at: { element: 'crib/A', property: 'captures' }, text: 'rail, joists' },
      { kind: 'set', at: { element: 'crib/A', property: 'courses' }, text: '6' },
    ]);
  });

  // Common practice, no source: all four loaded, 3 × 16 in = 48 in.
  it.each([
    [13, 0],
    [14, 1],
  ])('with all four loaded, %i courses give %i findings', (courses, findings) => {
    expect(check(rule, withCrib({ courses }))).toHaveLength(findings);
  });

  it('takes a height exactly at the limit', () => {
    expect(
      check(rule, {
        ...withCrib({ courses: 14 }),
        policy: policyWith('height ratio all contacts', 49 / 16),
      }),
    ).toEqual([]);
  });

  it('grants a crib that captures nothing no more than one contact', () => {
    const [found] = check(rule, withCrib({ captures: [], courses: 5 }));
    expect(english(found?.message)).toContain('The limit is 16 in with 0 of 4 contacts loaded (1 × 16 in)');
  });
});

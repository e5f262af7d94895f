import { english, hole } from '@cribwright/messages/testing';
import { crib, foot, inch, planOf, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (x: number, y: number, change: Parameters<typeof crib>[3] = {}) =>
  check(rule, planOf({ vehicles: [vanTrailer], cribs: [crib('A', x, y, change)] }));

describe('joist-miss', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));

  it('says which contact misses and by how much, and moves the crib', () => {
    const [finding] = found(20 * foot, -42.75 * inch);
    // Contacts stand 6.25 in either side of the middle; joists every 12 in, 3 in wide: 6.25 − 1.5 in off.
    expect(english(finding?.message)).toContain('contact 2 misses the joists by 4 1/4 in.');
    expect(english(finding?.message)).toContain('The limit is 2 in.');
    expect(finding?.fixes[0]?.edits[0]).toMatchObject({
      kind: 'place',
      at: { element: 'crib/A', property: 'at' },
    });
  });

  it('offers a place that holds', () => {
    const [finding] = found(20 * foot, -42.75 * inch);
    const text = hole(finding?.fixes[0]?.title.holes.place) ?? '';
    const [, ft, inches] = /^(\d+) ft(?: ([\d.]+) in)?,/.exec(text) ?? [];
    expect(found(Number(ft) * foot + Number(inches ?? 0) * inch, -42.75 * inch)).toEqual([]);
  });

  it('takes a part named alone at its word', () =>
    expect(
      found(20 * foot, -42.75 * inch, {
        captures: [{ vehicle: vanTrailer.id, part: 'rail', ref: { element: 'crib/A' } }],
      }),
    ).toEqual([]));

  it('says so where a crib captures nothing, or misses all', () => {
    expect(english(found(20 * foot, 0, { captures: [] })[0]?.message)).toBe(
      'Crib A captures no part. State the part that its top meets.',
    );
    expect(
      found(20 * foot, 0, {
        captures: [{ vehicle: vanTrailer.id, part: 'rail', ref: { element: 'crib/A' } }],
      }),
    ).toHaveLength(1);
  });
});

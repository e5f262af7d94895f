import { english } from '@cribwright/messages/testing';
import { crib, foot, planOf, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const way = (x: number, width = 4) => [
  {
    id: 'egress/W',
    name: 'W',
    points: [
      { x: x * foot, y: -14 * foot },
      { x: x * foot, y: 0 },
    ],
    width: width * foot,
    ref: { element: 'egress/W' },
  },
];
const found = (x: number, width?: number) =>
  check(rule, planOf({ cribs: [crib('A', 10 * foot, -5 * foot)], egress: way(x, width) })).map((f) =>
    english(f.message),
  );

describe('egress-blocked', () => {
  it('passes the sample', () => expect(check(rule, trailerOnCar)).toEqual([]));
  it('passes beside a crib, and not through it', () => {
    expect(found(13.1)).toEqual([]);
    expect(found(12.5)).toEqual(['Egress W is blocked by crib A. Move it, or plan another egress.']);
  });
  it('warns of a narrow one', () => expect(found(20, 2)[0]).toContain('is 24 in wide. The minimum is 36 in'));
  it('wants no strap across', () => {
    // Along the truck from 8 to 20 ft: the strap from base to base lies across it at 14 ft.
    const points = [
      { x: 8 * foot, y: 0.2 },
      { x: 20 * foot, y: 0.2 },
    ];
    const egress = trailerOnCar.egress.map((w) => ({ ...w, points }));
    const ids = check(rule, { ...trailerOnCar, egress }).map((f) => f.message.id);
    expect(ids).toContain('egress-blocked.across');
  });
  it('notes that there is none', () =>
    expect(check(rule, planOf({ cribs: [crib('A', 1, 1)] }))[0]).toMatchObject({ severity: 'note' }));
});

import { english } from '@cribwright/messages/testing';
import {
  crib,
  foot,
  inch,
  planOf,
  sedan,
  strut,
  trailerOnCar,
  truckOnCar,
  vanTrailer,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const side = -42.75 * inch;
const ids = (...given: Parameters<typeof planOf>) => check(rule, planOf(...given)).map((f) => f.message.id);

describe('crib-clash', () => {
  it('passes the samples', () => {
    expect(check(rule, trailerOnCar)).toEqual([]);
    expect(check(rule, truckOnCar)).toEqual([]);
  });
  it('lets cribs touch and not run into each other', () => {
    expect(ids({ cribs: [crib('A', 2, 0), crib('B', 2 + 24 * inch, 0)] })).toEqual([]);
    const [finding] = check(rule, planOf({ cribs: [crib('A', 2, 0), crib('B', 2 + 20 * inch, 0)] }));
    expect(english(finding?.message)).toContain('crib A and crib B overlap by 4 in');
  });
  it('finds a crib for the trailer where the car is', () =>
    expect(ids({ vehicles: [vanTrailer, sedan], cribs: [crib('A', 23 * foot, side)] })).toEqual([
      'crib-clash.body',
    ]));
  it('finds a crib among the wheels', () =>
    expect(ids({ vehicles: [vanTrailer], cribs: [crib('A', 46.5 * foot, -36 * inch)] })).toEqual([
      'crib-clash.wheels',
    ]));
  it('finds a strut that runs through a crib', () =>
    expect(
      ids({
        vehicles: [vanTrailer],
        cribs: [crib('A', 14 * foot, -70 * inch)],
        struts: [strut('S1', 14 * foot, -49 * inch, -87 * inch)],
      }),
    ).toEqual(['crib-clash.strut-through']));
});

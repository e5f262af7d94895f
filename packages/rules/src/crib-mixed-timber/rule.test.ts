import { english } from '@cribwright/messages/testing';
import { fir4x4, trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

it('passes cribs of one timber', () => expect(check(rule, trailerOnCar)).toEqual([]));
it('says how much stiffer the other is', () => {
  const oak = { ...fir4x4, name: 'Oak4x4', species: 'oak', modulusAcross: 2 * fir4x4.modulusAcross };
  const cribs = trailerOnCar.cribs.map((c) => (c.name === 'B' ? { ...c, timber: oak } : c));
  expect(check(rule, { ...trailerOnCar, cribs }).map((f) => english(f.message))).toEqual([
    expect.stringContaining(
      'Cribs A and B support the trailer with different timber: 4x4 Douglas fir-larch and 4x4 oak. The stiffer crib takes 2 times the load',
    ),
  ]);
});

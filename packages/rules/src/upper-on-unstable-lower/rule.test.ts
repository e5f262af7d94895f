import { english } from '@cribwright/messages/testing';
import { trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

it('passes a car that is held', () => expect(check(rule, trailerOnCar)).toEqual([]));

it('says so where nothing holds the car', () => {
  const loose = {
    ...trailerOnCar,
    cribs: trailerOnCar.cribs.filter((c) => !c.name.startsWith('C') || c.name === 'C'),
  };
  expect(check(rule, loose).map((f) => english(f.message))).toEqual([
    'The trailer rests on the car, and nothing holds the car. Put cribs or step chocks under the car before anyone touches the trailer.',
  ]);
});

it('lets coupled vehicles be', () =>
  expect(
    check(rule, {
      ...trailerOnCar,
      cribs: [],
      contacts: trailerOnCar.contacts.map((c) => ({ ...c, coupled: true })),
    }),
  ).toEqual([]));

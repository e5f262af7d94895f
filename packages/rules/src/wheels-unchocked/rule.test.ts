import { english } from '@cribwright/messages/testing';
import { chock, planOf, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const unchocked = { ...trailerOnCar, chocks: [] };

describe('wheels-unchocked', () => {
  it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));
  it('is a danger for the vehicle on top, a warning for the one beneath', () =>
    expect(check(rule, unchocked).map((f) => [f.subject.element, f.severity])).toEqual([
      ['vehicle/trailer', 'danger'],
      ['vehicle/car', 'warning'],
    ]));
  it('is a danger for any on a grade', () => {
    const graded = { ...unchocked, ground: { ...unchocked.ground, grade: 0.015 } };
    const found = check(rule, graded);
    expect(found.every((f) => f.severity === 'danger')).toBe(true);
    expect(english(found[0]?.message)).toContain(
      'a grade of 1.5 % and its wheels are not chocked against rolling in either direction',
    );
  });
  it('takes two one-way chocks for one both ways', () => {
    const ways = (...list: readonly ('forward' | 'rearward')[]) =>
      check(
        rule,
        planOf({
          vehicles: [vanTrailer],
          chocks: list.map((w, i) => chock(`K${i}`, 'trailer', { ways: w })),
        }),
      );
    expect(ways('forward', 'rearward')).toEqual([]);
    expect(ways('forward')[0]?.fixes[0]?.edits[0]).toMatchObject({ kind: 'set', text: 'both directions' });
  });
  it('asks for none where no wheel is on the ground', () =>
    expect(check(rule, planOf({ vehicles: [{ ...vanTrailer, position: { kind: 'on its roof' } }] }))).toEqual(
      [],
    ));
});

it('takes the chocks of a coupled tractor for its trailer', () => {
  const coupled = trailerOnCar.contacts.map((c) => ({ ...c, coupled: true }));
  const chocks = trailerOnCar.chocks.filter((c) => c.vehicle === 'vehicle/car');
  expect(check(rule, { ...trailerOnCar, chocks, contacts: coupled })).toEqual([]);
  expect(check(rule, { ...trailerOnCar, chocks })).toHaveLength(1);
});

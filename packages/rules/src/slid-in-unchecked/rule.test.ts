import { english } from '@cribwright/messages/testing';
import { step, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const slid = {
  ...trailerOnCar,
  cribs: trailerOnCar.cribs.map((c) => (c.name === 'A' ? { ...c, slidIn: true } : c)),
};
const found = (plan: typeof trailerOnCar) => check(rule, plan).map((f) => english(f.message));
const words =
  'Crib A is slid in, so its far contacts are out of sight. No later step checks it. Add a step that checks crib A from the other side.';

describe('slid-in-unchecked', () => {
  it('passes cribs that are built in place', () => expect(found(trailerOnCar)).toEqual([]));
  it('asks for a check of a crib that is slid in', () => expect(found(slid)).toEqual([words]));
  it('takes a step that slides it for the same', () =>
    expect(found({ ...trailerOnCar, steps: [...trailerOnCar.steps, step(10, 'slide', ['crib/A'])] })).toEqual(
      [words],
    ));
  it('is content with a later step that checks the crib', () =>
    expect(found({ ...slid, steps: [...slid.steps, step(10, 'check', ['crib/A'])] })).toEqual([]));
  it('is not content with a check before the crib is there', () =>
    expect(found({ ...slid, steps: [step(0, 'check', ['crib/A']), ...slid.steps] })).toEqual([words]));
  it('asks for it where the plan has no steps', () => expect(found({ ...slid, steps: [] })).toEqual([words]));
});

import { english } from '@cribwright/messages/testing';
import { between } from '@cribwright/model';
import { inch, planOf, strut, trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const out = (inches: number, change = {}) =>
  check(rule, planOf({ struts: [strut('S1', 4, 0, -inches * inch, change)] })).map((f) => english(f.message));

it('passes the samples', () => expect(check(rule, trailerOnCar)).toEqual([]));
// By hand: 40 in up and 96 in out is √(40² + 96²) = 104 in, and the strut goes to 8 ft = 96 in.
it('finds one that is too long', () =>
  expect(out(96)[0]).toContain(
    'needs 104 in from base to head (√(96 in² + 40 in²)). The longest reach of Strut4to8ft is 96 in.',
  ));
it('finds one that is too short', () =>
  expect(out(9)[0]).toContain('The shortest length of Strut4to8ft is 48 in.'));
it('answers for the high end of the head', () => {
  const head = { ...strut('S1', 4, 0, 0).head, z: between(40 * inch, 70 * inch) };
  expect(out(72, { head })).toHaveLength(1);
  expect(out(60, { head })).toEqual([]);
});

import { english } from '@cribwright/messages/testing';
import { step, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const found = (steps: typeof trailerOnCar.steps) =>
  check(rule, { ...trailerOnCar, steps }).map((f) => english(f.message));
const without = (number: number) => trailerOnCar.steps.filter((s) => s.number !== number);
/** The steps in another order: line order is what they wait by. */
const order = (...numbers: readonly number[]) =>
  numbers.flatMap((n) => trailerOnCar.steps.filter((s) => s.number === n));

describe('order-missing', () => {
  it('passes the sample', () => expect(check(rule, trailerOnCar)).toEqual([]));
  it('notes a plan without steps', () =>
    expect(check(rule, { ...trailerOnCar, steps: [] })[0]?.severity).toBe('note'));
  it('names what no step puts in', () =>
    expect(found(without(5))).toEqual(['No step puts in crib B.', 'No step puts in crib D.']));
  it('wants chocks first', () =>
    expect(found(order(1, 3, 4, 2, 5, 6, 7, 8, 9))).toEqual([
      'Step 4 works at the trailer before its wheels are chocked (step 2). Chock first.',
    ]));
  it('wants both ends before a strap is tightened', () =>
    expect(found(order(1, 2, 3, 4, 5, 8, 6, 7, 9))[0]).toContain(
      'Step 8 tightens strap T1 before strut S1 is set.',
    ));
  it('wants locks before the check', () =>
    expect(found(order(1, 2, 3, 4, 5, 6, 8, 9, 7))[0]).toContain(
      'Step 9 checks strut S1 before it is locked (step 7)',
    ));
  it('finds a circle', () => {
    const circle = trailerOnCar.steps.map((s) => (s.number === 4 ? { ...s, after: ['step/6'] } : s));
    expect(found(circle)).toContain(
      'Steps 4, 5 and 6 wait for each other, so none of them can start. Remove one `after`.',
    );
  });
  it('takes out nothing that is not there', () =>
    expect(found([...trailerOnCar.steps, step(10, 'remove', ['crib/Z'])])).toEqual([
      'Step 10 removes crib Z, but no earlier step puts it in.',
    ]));
});

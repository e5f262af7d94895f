import { english } from '@cribwright/messages/testing';
import { exactly } from '@cribwright/model';
import { planOf, step, trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const free = { after: ['step/0'] };
const steps = [
  step(1, 'build', ['crib/A'], { ...free, crew: 3, takes: exactly(300) }),
  step(2, 'build', ['crib/B'], { ...free, crew: 3, takes: exactly(60) }),
];
const crew = (people: number) => [{ name: 'Engine 4', people }];

it('passes the sample', () => expect(check(rule, trailerOnCar)).toEqual([]));
it('adds up what is under way at one time', () => {
  expect(check(rule, planOf({ steps, crews: crew(6) }))).toEqual([]);
  expect(english(check(rule, planOf({ steps, crews: crew(5) }))[0]?.message)).toContain(
    'Steps 1 and 2 run at the same time and take 6 people. Staffing is 5.',
  );
});
it('does not add what waits', () =>
  expect(check(rule, planOf({ steps: steps.map((s) => ({ ...s, after: [] })), crews: crew(3) }))).toEqual(
    [],
  ));
it('notes that staffing is not stated', () =>
  expect(check(rule, planOf({ steps }))[0]?.severity).toBe('note'));

import { crib, planOf } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const cribs = [crib('A', 1, 1)];
const unit = { id: 'cache/Pine2', name: 'Pine 2', people: 4, carries: [], ref: { element: 'cache/Pine2' } };

it('asks who comes', () =>
  expect(check(rule, planOf({ cribs }))[0]?.message.id).toBe('cache-unknown.no-unit'));
it('asks nothing where nothing is needed', () => expect(check(rule, planOf({}))).toEqual([]));
it('warns of a cache that lists nothing', () =>
  expect(check(rule, planOf({ cribs, units: [unit] }))[0]).toMatchObject({
    severity: 'warning',
    subject: { element: 'cache/Pine2' },
  }));
it('passes a cache that lists something', () => {
  const carries = [{ kind: 'chock', item: 'wheel chocks', count: 2, ref: unit.ref } as const];
  expect(check(rule, planOf({ cribs, units: [{ ...unit, carries }] }))).toEqual([]);
});

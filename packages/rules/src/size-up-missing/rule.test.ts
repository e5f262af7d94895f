import { planOf, trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

it('passes a full size-up', () => expect(check(rule, trailerOnCar)).toEqual([]));
it('asks nothing of a plan without vehicles', () => expect(check(rule, planOf({}))).toEqual([]));
it('asks for each of the four', () =>
  expect(check(rule, { ...trailerOnCar, sizeUp: [] }).map((f) => f.message.id)).toEqual(
    ['fuel', 'battery', 'cargo', 'brakes'].map((item) => `size-up-missing.${item}`),
  ));
it('takes dots for nothing', () => {
  const sizeUp = trailerOnCar.sizeUp.map((s) => (s.item === 'fuel' ? { ...s, finding: ' … ' } : s));
  expect(check(rule, { ...trailerOnCar, sizeUp }).map((f) => f.message.id)).toEqual(['size-up-missing.fuel']);
});

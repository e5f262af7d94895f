import { describe, expect, it } from 'vitest';
import { resting, spring, truck } from '../testing/one-body.js';
import { rest } from './rest.js';

// From the definition of equilibrium that is stable: a small motion must meet a force against it.
const line = [spring('left', 0, -1), spring('right', 0, 1)];
const balanced = (x: number, y: number, springs: Parameters<typeof truck>[3]) =>
  resting(rest(truck(50_000, x, y, springs))).balanced;

describe('a center exactly on the line of two contacts', () => {
  it('only balances where nothing else touches', () => {
    expect(balanced(0, 0, line)).toBe(true);
  });

  it('only balances where a third touches on one side: it may go over the other way', () => {
    expect(balanced(0, 0, [...line, spring('front', -3, 0)])).toBe(true);
    expect(balanced(0, 0.3, [...line, spring('front', -3, 0.7)])).toBe(true);
  });

  it('rests where one touches on either side', () => {
    expect(balanced(0, 0, [...line, spring('front', -3, 0), spring('rear', 2, 0)])).toBe(false);
  });

  it('rests once the center is inside by a hair that can be measured', () => {
    expect(balanced(-1e-4, 0, [...line, spring('front', -3, 0)])).toBe(false);
  });
});

it('only balances on one contact, whatever touches on one side of it', () => {
  expect(balanced(0, 0, [spring('post', 0, 0), spring('front', -3, 0), spring('near', -3, 1)])).toBe(true);
});

it('rests on three that push, whatever touches beside them', () => {
  const three = [spring('a', 0, -1), spring('b', 0, 1), spring('c', 4, 0)];
  expect(balanced(1, 0, three)).toBe(false);
});

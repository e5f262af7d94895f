import { expect, it } from 'vitest';
import { fixed } from './fixed.js';

it.each([
  [1, '1'],
  [1.23456, '1.235'],
  [-0.00001, '0'],
  [-0, '0'],
  [10, '10'],
  [0.5, '0.5'],
  [Number.NaN, '0'],
  [Number.POSITIVE_INFINITY, '0'],
])('writes %d as %s', (value, text) => expect(fixed(value)).toBe(text));

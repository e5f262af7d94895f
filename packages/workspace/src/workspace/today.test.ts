import { expect, it } from 'vitest';
import { today } from './today.js';

it('is the day where the reader is, late in the evening too', () => {
  expect(today(new Date(2026, 10, 5, 23, 59))).toBe('2026-11-05');
  expect(today(new Date(2027, 0, 1, 0, 0))).toBe('2027-01-01');
});

import { expect, it } from 'vitest';
import { limitRows } from './limit-rows.js';

it('picks the entries of each limit out of the columns, in the order of the columns', () => {
  // Two equations, two limits; three columns.
  const columns = {
    equalities: 2,
    count: 3,
    starts: Int32Array.of(0, 3, 4, 6),
    rows: Int32Array.of(0, 2, 3, 1, 1, 3),
    values: Float64Array.of(1, 20, 30, 4, 5, 31),
    objective: 2,
    right: Float64Array.of(0, 0, 7, 8),
  };
  const { from, starts, columns: of, values } = limitRows(columns);
  expect([...from]).toEqual([1, 4, 5]);
  expect([...starts]).toEqual([0, 1, 3]);
  expect([...of]).toEqual([0, 0, 2]);
  expect([...values]).toEqual([20, 30, 31]);
});

import { at, indexAt } from '../resting/at.js';
import type { LimitRows, LinearProgram } from './linear-program.js';

/** Picks the limits' entries out of columns that hold them after those of the equations. */
export function limitRows({
  equalities,
  count,
  starts,
  rows,
  values,
  right,
}: Omit<LinearProgram, 'limits'>): LimitRows {
  const from = new Int32Array(count);
  const begins = new Int32Array(right.length - equalities + 1);
  for (let j = 0; j < count; j++) {
    let e = indexAt(starts, j + 1);
    for (; e > indexAt(starts, j) && indexAt(rows, e - 1) >= equalities; e--) {
      const next = indexAt(rows, e - 1) - equalities + 1;
      begins[next] = indexAt(begins, next) + 1;
    }
    from[j] = e;
  }
  for (let i = 1; i < begins.length; i++) begins[i] = indexAt(begins, i) + indexAt(begins, i - 1);
  const filled = begins.slice();
  const total = indexAt(begins, begins.length - 1);
  const limits = { from, starts: begins, columns: new Int32Array(total), values: new Float64Array(total) };
  for (let j = 0; j < count; j++)
    for (let e = indexAt(from, j); e < indexAt(starts, j + 1); e++) {
      const row = indexAt(rows, e) - equalities;
      const place = indexAt(filled, row);
      limits.columns[place] = j;
      limits.values[place] = at(values, e);
      filled[row] = place + 1;
    }
  return limits;
}

import { at, indexAt } from '../resting/at.js';

/**
 * Maximise the amount of one column: columns × amounts = right side in the first `equalities` rows, at most the
 * right side in the rest; amounts not below zero.
 *
 * Columns lie one after the other: the entries of column j are `rows` and `values` from `starts[j]` up to
 * `starts[j + 1]`.
 */
export interface LinearProgram {
  readonly equalities: number;
  readonly count: number;
  readonly starts: Int32Array;
  readonly rows: Int32Array;
  readonly values: Float64Array;
  readonly objective: number;
  readonly right: Float64Array;
}

/** Which columns are in use, the inverse of their matrix, and their amounts. Columns from `n` on are the rows' own. */
export interface SimplexState {
  readonly basis: Int32Array;
  readonly inBasis: Uint8Array;
  readonly inverse: Float64Array;
  readonly x: Float64Array;
}

/** Every row on its own: with a slack, or with an artificial amount that has to go to zero. */
export function startState(lp: LinearProgram): SimplexState {
  const m = lp.right.length;
  const n = lp.count;
  const state = {
    basis: Int32Array.from({ length: m }, (_, i) => n + i),
    inBasis: new Uint8Array(n + m).fill(1, n),
    inverse: new Float64Array(m * m),
    x: new Float64Array(m),
  };
  for (let i = 0; i < m; i++) {
    const sign = i < lp.equalities && at(lp.right, i) < 0 ? -1 : 1;
    state.inverse[i * m + i] = sign;
    state.x[i] = sign * at(lp.right, i);
  }
  return state;
}

export const copyState = (s: SimplexState): SimplexState => ({
  basis: Int32Array.from(s.basis),
  inBasis: Uint8Array.from(s.inBasis),
  inverse: Float64Array.from(s.inverse),
  x: Float64Array.from(s.x),
});

/** columnᵀ duals: what column `j` costs at these prices. */
export function worth({ starts, rows, values }: LinearProgram, j: number, duals: Float64Array): number {
  const end = indexAt(starts, j + 1);
  let sum = 0;
  for (let e = indexAt(starts, j); e < end; e++) sum += at(values, e) * at(duals, indexAt(rows, e));
  return sum;
}

/** The column as a mix of those in use: inverse × column. */
export function fillColumn(
  alpha: Float64Array,
  { inverse }: SimplexState,
  lp: LinearProgram,
  entering: number,
): void {
  const m = alpha.length;
  if (entering >= lp.count) {
    const row = entering - lp.count;
    for (let i = 0; i < m; i++) alpha[i] = at(inverse, i * m + row);
    return;
  }
  const { rows, values } = lp;
  const start = indexAt(lp.starts, entering);
  const end = indexAt(lp.starts, entering + 1);
  for (let i = 0; i < m; i++) {
    let sum = 0;
    for (let e = start; e < end; e++) sum += at(inverse, i * m + indexAt(rows, e)) * at(values, e);
    alpha[i] = sum;
  }
}

/** Puts a column in the place of another one. */
export function exchange(s: SimplexState, alpha: Float64Array, leaving: number, entering: number): void {
  const { inverse, x, basis, inBasis } = s;
  const m = alpha.length;
  const by = 1 / at(alpha, leaving);
  const row = leaving * m;
  const nonzero = new Int32Array(m);
  let count = 0;
  for (let j = 0; j < m; j++) {
    const value = at(inverse, row + j);
    if (value === 0) continue;
    inverse[row + j] = value * by;
    nonzero[count++] = j;
  }
  x[leaving] = at(x, leaving) * by;
  for (let i = 0; i < m; i++) {
    const a = at(alpha, i);
    if (i === leaving || a === 0) continue;
    for (let e = 0; e < count; e++) {
      const j = indexAt(nonzero, e);
      inverse[i * m + j] = at(inverse, i * m + j) - a * at(inverse, row + j);
    }
    x[i] = at(x, i) - a * at(x, leaving);
  }
  inBasis[indexAt(basis, leaving)] = 0;
  basis[leaving] = entering;
  inBasis[entering] = 1;
}

/** Amounts anew from the right side: inverse × right. */
export function refreshAmounts({ inverse, x }: SimplexState, right: Float64Array): void {
  const m = right.length;
  for (let i = 0; i < m; i++) {
    let sum = 0;
    for (let j = 0; j < m; j++) sum += at(inverse, i * m + j) * at(right, j);
    x[i] = sum;
  }
}

export function amountsOf({ basis, x }: SimplexState, n: number): Float64Array {
  const amounts = new Float64Array(n);
  for (let i = 0; i < basis.length; i++) {
    const column = indexAt(basis, i);
    if (column < n) amounts[column] = Math.max(0, at(x, i));
  }
  return amounts;
}

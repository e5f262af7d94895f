import { at, indexAt } from '../resting/at.js';
import type { LinearProgram } from './linear-program.js';

/** A row's own amount that has to go to zero. */
export const isArtificial = (lp: LinearProgram, column: number): boolean =>
  column >= lp.count && column < lp.count + lp.equalities;

/**
 * Which columns are in use, the inverse of their matrix, and their amounts. Columns from `n` on are the rows' own.
 *
 * The inverse lies column by column. Most limits are far from reached, and their columns of it are still those of
 * the unit matrix: only the `live` ones are worked with.
 */
export interface SimplexState {
  readonly basis: Int32Array;
  readonly inBasis: Uint8Array;
  readonly inverse: Float64Array;
  readonly live: LiveColumns;
  readonly x: Float64Array;
}

export interface LiveColumns {
  readonly list: Int32Array;
  readonly has: Uint8Array;
  count: number;
}

function enliven(live: LiveColumns, column: number): void {
  if (live.has[column] === 1) return;
  live.has[column] = 1;
  live.list[live.count++] = column;
}

/** Every row on its own: with a slack, or with an artificial amount that has to go to zero. */
export function startState(lp: LinearProgram): SimplexState {
  const m = lp.right.length;
  const n = lp.count;
  const state = {
    basis: Int32Array.from({ length: m }, (_, i) => n + i),
    inBasis: new Uint8Array(n + m).fill(1, n),
    inverse: new Float64Array(m * m),
    live: { list: new Int32Array(m), has: new Uint8Array(m), count: 0 },
    x: new Float64Array(m),
  };
  for (let i = 0; i < m; i++) {
    const sign = i < lp.equalities && at(lp.right, i) < 0 ? -1 : 1;
    state.inverse[i * m + i] = sign;
    state.x[i] = sign * at(lp.right, i);
    if (i < lp.equalities) enliven(state.live, i);
  }
  return state;
}

export const copyState = (s: SimplexState): SimplexState => ({
  basis: s.basis.slice(),
  inBasis: s.inBasis.slice(),
  inverse: s.inverse.slice(),
  live: { list: s.live.list.slice(), has: s.live.has.slice(), count: s.live.count },
  x: s.x.slice(),
});

/** columnᵀ duals: what column `j` costs at these prices. */
export function worth({ starts, rows, values }: LinearProgram, j: number, duals: Float64Array): number {
  const end = indexAt(starts, j + 1);
  let sum = 0;
  for (let e = indexAt(starts, j); e < end; e++) sum += at(values, e) * at(duals, indexAt(rows, e));
  return sum;
}

/** One row of the inverse. */
export function fillRow(row: Float64Array, { inverse, live }: SimplexState, i: number): void {
  const m = row.length;
  row.fill(0);
  row[i] = at(inverse, i * m + i);
  for (let l = 0; l < live.count; l++) {
    const j = indexAt(live.list, l);
    row[j] = at(inverse, j * m + i);
  }
}

/** The column as a mix of those in use: inverse × column. */
export function fillColumn(alpha: Float64Array, s: SimplexState, lp: LinearProgram, entering: number): void {
  alpha.fill(0);
  if (entering >= lp.count) {
    addColumn(alpha, s, entering - lp.count, 1);
    return;
  }
  const end = indexAt(lp.starts, entering + 1);
  for (let e = indexAt(lp.starts, entering); e < end; e++)
    addColumn(alpha, s, indexAt(lp.rows, e), at(lp.values, e));
}

function addColumn(alpha: Float64Array, { inverse, live }: SimplexState, j: number, times: number): void {
  const m = alpha.length;
  if (live.has[j] !== 1) {
    alpha[j] = at(alpha, j) + times;
    return;
  }
  const start = j * m;
  for (let i = 0; i < m; i++) alpha[i] = at(alpha, i) + times * at(inverse, start + i);
}

/** Puts a column in the place of another one. */
export function exchange(s: SimplexState, alpha: Float64Array, leaving: number, entering: number): void {
  const { inverse, x, basis, inBasis, live } = s;
  const m = alpha.length;
  // Only the column of its own row can reach the one that leaves from outside the live ones.
  enliven(live, leaving);
  const by = 1 / at(alpha, leaving);
  alpha[leaving] = 0;
  for (let l = 0; l < live.count; l++) {
    const start = indexAt(live.list, l) * m;
    const value = at(inverse, start + leaving) * by;
    if (value === 0) continue;
    for (let i = 0; i < m; i++) inverse[start + i] = at(inverse, start + i) - value * at(alpha, i);
    inverse[start + leaving] = value;
  }
  const amount = at(x, leaving) * by;
  for (let i = 0; i < m; i++) x[i] = at(x, i) - amount * at(alpha, i);
  x[leaving] = amount;
  alpha[leaving] = 1 / by;
  inBasis[indexAt(basis, leaving)] = 0;
  basis[leaving] = entering;
  inBasis[entering] = 1;
}

/** Amounts anew from the right side: inverse × right. */
export function refreshAmounts(s: SimplexState, right: Float64Array): void {
  s.x.fill(0);
  for (let j = 0; j < right.length; j++) if (right[j] !== 0) addColumn(s.x, s, j, at(right, j));
}

export function amountsOf({ basis, x }: SimplexState, n: number): Float64Array {
  const amounts = new Float64Array(n);
  for (let i = 0; i < basis.length; i++) {
    const column = indexAt(basis, i);
    if (column < n) amounts[column] = Math.max(0, at(x, i));
  }
  return amounts;
}

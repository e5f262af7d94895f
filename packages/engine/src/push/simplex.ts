import { at, indexAt } from '../resting/at.js';

/** A column of a linear program by its entries that are not zero. */
export interface SparseColumn {
  readonly rows: Int32Array;
  readonly values: Float64Array;
}

/**
 * Maximise the amount of one column: columns × amounts = right side in the first `equalities` rows, at most the
 * right side (which is not below zero there) in the rest; amounts not below zero.
 */
export interface LinearProgram {
  readonly equalities: number;
  readonly columns: readonly SparseColumn[];
  readonly objective: number;
  readonly right: Float64Array;
}

export type Outcome =
  | {
      readonly kind: 'optimal';
      readonly amounts: Float64Array;
      /** One a row. right · duals bounds the objective from above where no column's reduced cost is above zero. */
      readonly duals: Float64Array;
    }
  /** columnᵀ proof ≤ 0 for every column, rightᵀ proof > 0, proof ≥ 0 on the limits' rows reversed in sign. */
  | { readonly kind: 'infeasible'; readonly proof: Float64Array }
  | { readonly kind: 'stuck' };

const small = 1e-9;

/**
 * Two-phase revised simplex with an explicit inverse. The objective is a single column, so that the duals are one
 * row of the inverse, and an iteration costs little more than the update.
 *
 * Its answers are claims. `checkOutcome` proves or refutes them, and whoever calls it must ask.
 */
export function simplex(lp: LinearProgram): Outcome {
  const m = lp.right.length;
  const n = lp.columns.length;
  const basis = new Int32Array(m);
  const inverse = new Float64Array(m * m);
  const x = new Float64Array(m);
  const inBasis = new Uint8Array(n + m);
  for (let i = 0; i < m; i++) {
    const sign = i < lp.equalities && at(lp.right, i) < 0 ? -1 : 1;
    inverse[i * m + i] = sign;
    x[i] = sign * at(lp.right, i);
    // Row i starts with its own slack, or with an artificial amount that must go to zero.
    basis[i] = n + i;
    inBasis[n + i] = 1;
  }
  const artificial = (column: number) => column >= n && column < n + lp.equalities;
  const duals = new Float64Array(m);
  const alpha = new Float64Array(m);
  let feasible = false;
  for (let turn = 0; turn < 50 * (m + 20); turn++) {
    if (!feasible) {
      let sum = 0;
      for (let i = 0; i < m; i++) if (artificial(indexAt(basis, i))) sum += at(x, i);
      feasible = sum <= small;
    }
    fillDuals(duals, inverse, basis, m, feasible ? lp.objective : undefined, artificial);
    const entering = price(lp, duals, inBasis, feasible, turn > 25 * (m + 20));
    if (entering === undefined) {
      if (feasible) return { kind: 'optimal', amounts: amountsOf(basis, x, n), duals };
      return { kind: 'infeasible', proof: duals.map((d) => -d) };
    }
    fillColumn(alpha, inverse, lp, entering, m);
    const leaving = ratio(alpha, x, basis, m, feasible, artificial);
    if (leaving === undefined) return { kind: 'stuck' };
    pivot(inverse, x, alpha, leaving, m);
    inBasis[indexAt(basis, leaving)] = 0;
    basis[leaving] = entering;
    inBasis[entering] = 1;
  }
  return { kind: 'stuck' };
}

function fillDuals(
  duals: Float64Array,
  inverse: Float64Array,
  basis: Int32Array,
  m: number,
  objective: number | undefined,
  artificial: (column: number) => boolean,
): void {
  duals.fill(0);
  for (let i = 0; i < m; i++) {
    const column = indexAt(basis, i);
    const cost = objective === undefined ? (artificial(column) ? -1 : 0) : column === objective ? 1 : 0;
    if (cost === 0) continue;
    for (let j = 0; j < m; j++) duals[j] = at(duals, j) + cost * at(inverse, i * m + j);
  }
}

/** The column that gains most; after many turns the first that gains, which cannot go round in circles. */
function price(
  lp: LinearProgram,
  duals: Float64Array,
  inBasis: Uint8Array,
  feasible: boolean,
  first: boolean,
): number | undefined {
  const n = lp.columns.length;
  let best: number | undefined;
  let most = small;
  for (let j = 0; j < n; j++) {
    if (inBasis[j] === 1) continue;
    const gain = (feasible && j === lp.objective ? 1 : 0) - worth(lp.columns[j], duals);
    if (gain > most) {
      best = j;
      if (first) return j;
      most = gain;
    }
  }
  for (let i = lp.equalities; i < duals.length; i++) {
    if (inBasis[n + i] === 1) continue;
    const gain = -at(duals, i);
    if (gain > most) {
      best = n + i;
      if (first) return best;
      most = gain;
    }
  }
  return best;
}

export function worth(column: SparseColumn | undefined, duals: Float64Array): number {
  if (column === undefined) return 0;
  let sum = 0;
  for (let e = 0; e < column.rows.length; e++)
    sum += at(column.values, e) * at(duals, indexAt(column.rows, e));
  return sum;
}

function fillColumn(
  alpha: Float64Array,
  inverse: Float64Array,
  lp: LinearProgram,
  entering: number,
  m: number,
): void {
  const column = lp.columns[entering];
  if (column === undefined) {
    const row = entering - lp.columns.length;
    for (let i = 0; i < m; i++) alpha[i] = at(inverse, i * m + row);
    return;
  }
  const { rows, values } = column;
  for (let i = 0; i < m; i++) {
    let sum = 0;
    for (let e = 0; e < rows.length; e++) sum += at(inverse, i * m + indexAt(rows, e)) * at(values, e);
    alpha[i] = sum;
  }
}

/** Which amount reaches zero first; of equal ones the one with the largest pivot. */
function ratio(
  alpha: Float64Array,
  x: Float64Array,
  basis: Int32Array,
  m: number,
  feasible: boolean,
  artificial: (column: number) => boolean,
): number | undefined {
  let step = Number.POSITIVE_INFINITY;
  for (let i = 0; i < m; i++) {
    const a = at(alpha, i);
    if (feasible && artificial(indexAt(basis, i)) && Math.abs(a) > small) return i;
    if (a > small) step = Math.min(step, (Math.max(0, at(x, i)) + 1e-12) / a);
  }
  let leaving: number | undefined;
  let largest = 0;
  for (let i = 0; i < m; i++) {
    const a = at(alpha, i);
    if (a > small && Math.max(0, at(x, i)) <= step * a && a > largest) {
      largest = a;
      leaving = i;
    }
  }
  return leaving;
}

function pivot(
  inverse: Float64Array,
  x: Float64Array,
  alpha: Float64Array,
  leaving: number,
  m: number,
): void {
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
}

function amountsOf(basis: Int32Array, x: Float64Array, n: number): Float64Array {
  const amounts = new Float64Array(n);
  for (let i = 0; i < basis.length; i++) {
    const column = indexAt(basis, i);
    if (column < n) amounts[column] = Math.max(0, at(x, i));
  }
  return amounts;
}

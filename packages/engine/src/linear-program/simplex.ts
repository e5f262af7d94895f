import { at, indexAt } from '../resting/at.js';
import type { LinearProgram } from './linear-program.js';
import { gainOf, price, priceFirst, pricing } from './pricing.js';
import {
  amountsOf,
  exchange,
  fillColumn,
  fillRow,
  isArtificial,
  refreshAmounts,
  type SimplexState,
  startState,
  worth,
} from './simplex-state.js';

export type Outcome =
  | {
      readonly kind: 'optimal';
      readonly amounts: Float64Array;
      /** One a row. right · duals bounds the objective from above where no column's reduced cost is above zero. */
      readonly duals: Float64Array;
      readonly state: SimplexState;
    }
  /** columnᵀ proof ≤ 0 for every column, rightᵀ proof > 0, proof ≥ 0 on the limits' rows reversed in sign. */
  | { readonly kind: 'infeasible'; readonly proof: Float64Array }
  | { readonly kind: 'stuck' };

const small = 1e-9;

/**
 * Two-phase revised simplex with an explicit inverse. The objective is a single column, so that the duals are one
 * row of the inverse, and an iteration costs little more than the update. Limits that are far from reached cost
 * nothing, and columns that gained much are looked at again before all of them are.
 *
 * Its answers are claims. `provenBound` and `provenInfeasible` prove or refute them, and whoever calls it must ask.
 */
export function simplex(lp: LinearProgram, state = startState(lp)): Outcome {
  const m = lp.right.length;
  const n = lp.count;
  const duals = new Float64Array(m);
  const alpha = new Float64Array(m);
  let prices = pricing(lp);
  let feasible = false;
  for (let turn = 0; turn < 50 * (m + 20); turn++) {
    if (!feasible && artificialSum(lp, state) <= small) {
      feasible = true;
      prices = pricing(lp);
    }
    fillDuals(duals, lp, state, feasible);
    const entering =
      turn > 25 * (m + 20)
        ? priceFirst(lp, duals, state.inBasis, feasible)
        : price(prices, lp, duals, state.inBasis, feasible);
    if (entering === undefined) {
      if (feasible) return { kind: 'optimal', amounts: amountsOf(state, n), duals, state };
      return { kind: 'infeasible', proof: duals.map((d) => -d) };
    }
    fillColumn(alpha, state, lp, entering);
    const leaving = ratio(alpha, lp, state, feasible);
    if (leaving === undefined) return { kind: 'stuck' };
    exchange(state, alpha, leaving, entering);
  }
  return { kind: 'stuck' };
}

/**
 * The same program with another right side and another objective column, from the state that solved the first: its
 * prices still stand, or nearly, and a few turns of the dual method make the amounts right again.
 */
export function resume(lp: LinearProgram, state: SimplexState): Outcome {
  const m = lp.right.length;
  const alpha = new Float64Array(m);
  const place = state.basis.indexOf(lp.objective);
  if (place < 0) return { kind: 'stuck' };
  fillColumn(alpha, state, lp, lp.objective);
  if (Math.abs(at(alpha, place)) < 1e-6) return { kind: 'stuck' };
  exchange(state, alpha, place, lp.objective);
  refreshAmounts(state, lp.right);
  const duals = new Float64Array(m);
  const row = new Float64Array(m);
  for (let turn = 0; turn < 4 * m; turn++) {
    let leaving = -1;
    let least = -1e-11;
    for (let i = 0; i < m; i++) {
      if (isArtificial(lp, indexAt(state.basis, i)) && Math.abs(at(state.x, i)) > small)
        return { kind: 'stuck' };
      if (at(state.x, i) < least) {
        least = at(state.x, i);
        leaving = i;
      }
    }
    if (leaving < 0) return simplex(lp, state);
    fillDuals(duals, lp, state, true);
    const entering = dualRatio(lp, state, duals, row, leaving);
    if (entering === undefined) return { kind: 'stuck' };
    fillColumn(alpha, state, lp, entering);
    exchange(state, alpha, leaving, entering);
  }
  return { kind: 'stuck' };
}

function artificialSum(lp: LinearProgram, { basis, x }: SimplexState): number {
  let sum = 0;
  for (let i = 0; i < x.length; i++) if (isArtificial(lp, indexAt(basis, i))) sum += Math.abs(at(x, i));
  return sum;
}

function fillDuals(duals: Float64Array, lp: LinearProgram, s: SimplexState, feasible: boolean): void {
  if (feasible) {
    const place = s.basis.indexOf(lp.objective);
    if (place < 0) duals.fill(0);
    else fillRow(duals, s, place);
    return;
  }
  const m = duals.length;
  duals.fill(0);
  for (let i = 0; i < m; i++) {
    if (!isArtificial(lp, indexAt(s.basis, i))) continue;
    for (let l = 0; l < s.live.count; l++) {
      const j = indexAt(s.live.list, l);
      duals[j] = at(duals, j) - at(s.inverse, j * m + i);
    }
  }
}

/** Which amount reaches zero first; of equal ones the one with the largest pivot. */
function ratio(
  alpha: Float64Array,
  lp: LinearProgram,
  s: SimplexState,
  feasible: boolean,
): number | undefined {
  let step = Number.POSITIVE_INFINITY;
  for (let i = 0; i < alpha.length; i++) {
    const a = at(alpha, i);
    if (feasible && Math.abs(a) > small && isArtificial(lp, indexAt(s.basis, i))) return i;
    if (a > small) step = Math.min(step, (Math.max(0, at(s.x, i)) + 1e-12) / a);
  }
  let leaving: number | undefined;
  let largest = 0;
  for (let i = 0; i < alpha.length; i++) {
    const a = at(alpha, i);
    if (a > small && Math.max(0, at(s.x, i)) <= step * a && a > largest) {
      largest = a;
      leaving = i;
    }
  }
  return leaving;
}

/** Which column keeps the prices right as one leaves whose amount fell below zero. */
function dualRatio(
  lp: LinearProgram,
  s: SimplexState,
  duals: Float64Array,
  row: Float64Array,
  leaving: number,
): number | undefined {
  const m = duals.length;
  const n = lp.count;
  fillRow(row, s, leaving);
  let best: number | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let j = 0; j < n + m; j++) {
    if (s.inBasis[j] === 1 || isArtificial(lp, j)) continue;
    const a = j < n ? worth(lp, j, row) : at(row, j - n);
    if (a > -small) continue;
    const step = Math.max(0, -gainOf(lp, duals, j, true)) / -a;
    if (step < least - 1e-12 || (step < least + 1e-12 && best === undefined)) {
      least = step;
      best = j;
    }
  }
  return best;
}

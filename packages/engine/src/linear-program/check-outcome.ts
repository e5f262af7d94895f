import { at, indexAt } from '../resting/at.js';
import type { LinearProgram } from './linear-program.js';
import { worth } from './simplex-state.js';

/** Largest amount by which the equations, the limits or the signs are broken. */
export function shortfall(lp: LinearProgram, amounts: Float64Array): number {
  const left = Float64Array.from(lp.right);
  let worst = 0;
  for (let j = 0; j < lp.count; j++) {
    const amount = at(amounts, j);
    worst = Math.max(worst, -amount);
    const end = indexAt(lp.starts, j + 1);
    for (let e = indexAt(lp.starts, j); e < end; e++) {
      const row = indexAt(lp.rows, e);
      left[row] = at(left, row) - amount * at(lp.values, e);
    }
  }
  for (let i = 0; i < left.length; i++)
    worst = Math.max(worst, i < lp.equalities ? Math.abs(at(left, i)) : -at(left, i));
  return worst;
}

/**
 * The bound that duals prove: no amounts give the objective more than right · duals. `undefined` where some column
 * or limit breaks the conditions of the proof by more than a hair.
 */
export function provenBound(lp: LinearProgram, duals: Float64Array): number | undefined {
  for (let j = 0; j < lp.count; j++)
    if ((j === lp.objective ? 1 : 0) - worth(lp, j, duals) > 1e-7) return undefined;
  let bound = 0;
  for (let i = 0; i < duals.length; i++) {
    if (i >= lp.equalities && at(duals, i) < -1e-7) return undefined;
    bound += at(lp.right, i) * at(duals, i);
  }
  return bound;
}

/** Whether a proof that no amounts exist stands (Farkas): it works against every column, and the right side for it. */
export function provenInfeasible(lp: LinearProgram, proof: Float64Array): boolean {
  let work = 0;
  let size = 0;
  for (let i = 0; i < proof.length; i++) {
    if (i >= lp.equalities && at(proof, i) > 1e-9) return false;
    work += at(lp.right, i) * at(proof, i);
    size = Math.max(size, Math.abs(at(proof, i)));
  }
  if (!(work > 1e-7 * size)) return false;
  for (let j = 0; j < lp.count; j++)
    if (j !== lp.objective && worth(lp, j, proof) > 1e-9 * Math.max(1, size)) return false;
  return true;
}

import { at, indexAt } from '../resting/at.js';
import type { LinearProgram } from './linear-program.js';
import { isArtificial, worth } from './simplex-state.js';

/** Gains below this are taken for none. */
const small = 1e-9;
/** Share of the best gain at the last full look above which a column is looked at again, and above which it is taken. */
const [keptFrom, takenFrom] = [0.6, 0.5];

/** The columns that gained most when all were last looked at. Most of them still do some turns later. */
export interface Pricing {
  readonly gains: Float64Array;
  readonly kept: Int32Array;
  count: number;
  best: number;
}

export const pricing = (lp: LinearProgram): Pricing => ({
  gains: new Float64Array(lp.count + lp.right.length),
  kept: new Int32Array(lp.count + lp.right.length),
  count: 0,
  best: 0,
});

/** What a column or a slack adds to the objective for each unit of it. */
export function gainOf(lp: LinearProgram, duals: Float64Array, j: number, feasible: boolean): number {
  if (j >= lp.count) return -at(duals, j - lp.count);
  return (feasible && j === lp.objective ? 1 : 0) - worth(lp, j, duals);
}

/**
 * A column that gains nearly the most, out of those kept; where none of them does any more, the best of all.
 * `undefined` only after a look at all.
 */
export function price(
  p: Pricing,
  lp: LinearProgram,
  duals: Float64Array,
  inBasis: Uint8Array,
  feasible: boolean,
): number | undefined {
  let best: number | undefined;
  let most = Math.max(small, takenFrom * p.best);
  for (let i = 0; i < p.count; i++) {
    const j = indexAt(p.kept, i);
    if (inBasis[j] === 1) continue;
    const gain = gainOf(lp, duals, j, feasible);
    if (gain > most) {
      best = j;
      most = gain;
    }
  }
  return best ?? priceAll(p, lp, duals, inBasis, feasible);
}

/** Every column in one sweep, without a call for each: most of the time of a solve is spent here. */
function priceAll(
  p: Pricing,
  lp: LinearProgram,
  duals: Float64Array,
  inBasis: Uint8Array,
  feasible: boolean,
): number | undefined {
  const { starts, rows, values, count, objective, limits } = lp;
  const { gains } = p;
  for (let j = 0; j < count; j++) {
    const end = indexAt(limits.from, j);
    let gain = feasible && j === objective ? 1 : 0;
    for (let e = indexAt(starts, j); e < end; e++) gain -= at(values, e) * at(duals, indexAt(rows, e));
    gains[j] = gain;
  }
  for (let i = lp.equalities; i < duals.length; i++) {
    const dual = at(duals, i);
    gains[count + i] = -dual;
    if (dual === 0) continue;
    const end = indexAt(limits.starts, i - lp.equalities + 1);
    for (let e = indexAt(limits.starts, i - lp.equalities); e < end; e++) {
      const j = indexAt(limits.columns, e);
      gains[j] = at(gains, j) - dual * at(limits.values, e);
    }
  }
  let best: number | undefined;
  let most = small;
  for (let j = 0; j < gains.length; j++)
    if (at(gains, j) > most && inBasis[j] !== 1) {
      best = j;
      most = at(gains, j);
    }
  p.best = most;
  p.count = 0;
  for (let j = 0; j < gains.length; j++) if (at(gains, j) > keptFrom * most) p.kept[p.count++] = j;
  return best;
}

/** The first column that gains: slow, but it cannot go round in circles. */
export function priceFirst(
  lp: LinearProgram,
  duals: Float64Array,
  inBasis: Uint8Array,
  feasible: boolean,
): number | undefined {
  for (let j = 0; j < lp.count + duals.length; j++)
    if (inBasis[j] !== 1 && !isArtificial(lp, j) && gainOf(lp, duals, j, feasible) > small) return j;
  return undefined;
}

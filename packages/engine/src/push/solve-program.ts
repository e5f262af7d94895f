import { type Constraint, solve } from 'yalps';
import { provenBound, provenInfeasible, shortfall } from '../linear-program/check-outcome.js';
import type { LinearProgram } from '../linear-program/linear-program.js';
import { type Outcome, resume, simplex } from '../linear-program/simplex.js';
import { copyState, type SimplexState } from '../linear-program/simplex-state.js';
import { at, indexAt } from '../resting/at.js';

/** The most of a push that an equilibrium exists for. */
export interface Solution {
  /** Share of all weight. */
  readonly most: number;
  readonly amounts: Float64Array;
  /**
   * The motion of the collapse: velocities of the bodies and feet, then how fast each limit is spent. It proves that
   * no larger push can be held. `undefined` where the library answered: it gives none.
   */
  readonly motion: Float64Array | undefined;
  /** Largest force or moment left over, as a share of all weight (and of the reach). */
  readonly residual: number;
  /** Where the next program with the same columns may start. */
  readonly state: SimplexState | undefined;
}

export type Answer = Solution | { readonly most: undefined; readonly why: 'cannot stand' | 'unsolved' };

const good = 1e-9;

/**
 * Maximizes λ under columns × amounts + λ × push = load, amounts ≥ 0, and the limits.
 *
 * An answer counts only with its proof: amounts that balance to nine digits, and a motion that bounds λ from above
 * by the same value; or a motion that proves that nothing holds. Without one the library solves it again.
 *
 * @param from the state that solved a program with the same columns.
 */
export function solveProgram(lp: LinearProgram, from?: SimplexState): Answer {
  const resumed = from === undefined ? undefined : answer(lp, resume(lp, copyState(from)));
  return resumed ?? answer(lp, simplex(lp)) ?? byLibrary(lp);
}

/** The claim, if it comes with its proof. */
function answer(lp: LinearProgram, found: Outcome): Answer | undefined {
  if (found.kind === 'infeasible' && provenInfeasible(lp, found.proof))
    return { most: undefined, why: 'cannot stand' };
  if (found.kind !== 'optimal') return undefined;
  const residual = shortfall(lp, found.amounts);
  const most = at(found.amounts, lp.objective);
  const bound = provenBound(lp, found.duals);
  if (residual > good || bound === undefined || Math.abs(bound - most) > 1e-7 * Math.max(1, most))
    return undefined;
  return {
    most,
    amounts: found.amounts.subarray(0, lp.objective),
    motion: found.duals,
    residual,
    state: found.state,
  };
}

/**
 * The same by yalps. The m equations go in as m upper bounds and one lower bound on their sum, which says the same
 * with half the rows. Its "infeasible" is not taken at its word.
 */
function byLibrary(lp: LinearProgram): Answer {
  const objective = -1;
  const all = lp.right.length;
  let sum = 0;
  const constraints: [number, Constraint][] = Array.from(lp.right, (most, row) => {
    if (row < lp.equalities) sum += most;
    return [row, { max: most }];
  });
  constraints.push([all, { min: sum }]);
  const variables = Array.from({ length: lp.count }, (_, j): [number, [number, number][]] => {
    const entries: [number, number][] = j === lp.objective ? [[objective, 1]] : [];
    let balance = 0;
    for (let e = indexAt(lp.starts, j); e < indexAt(lp.starts, j + 1); e++) {
      const row = indexAt(lp.rows, e);
      const value = at(lp.values, e);
      if (value === 0) continue;
      entries.push([row, value]);
      if (row < lp.equalities) balance += value;
    }
    entries.push([all, balance]);
    return [j, entries];
  });
  const found = solve(
    { direction: 'maximize', objective, constraints, variables },
    { precision: 1e-10, maxPivots: 4000 },
  );
  if (found.status !== 'optimal') return { most: undefined, why: 'unsolved' };
  const amounts = new Float64Array(lp.count);
  for (const [j, value] of found.variables) amounts[j] = value;
  const residual = shortfall(lp, amounts);
  return residual > 1e-7
    ? { most: undefined, why: 'unsolved' }
    : {
        most: at(amounts, lp.objective),
        amounts: amounts.subarray(0, lp.objective),
        motion: undefined,
        residual,
        state: undefined,
      };
}

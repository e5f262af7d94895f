import { type Constraint, solve } from 'yalps';
import { at } from '../resting/at.js';
import { provenBound, provenInfeasible, shortfall } from './check-outcome.js';
import type { Program } from './program.js';
import { type Outcome, resume, simplex } from './simplex.js';
import { copyState, type LinearProgram, type SimplexState } from './simplex-state.js';

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

/** More than this share of all weight is not looked for. */
export const mostLookedFor = 10;

const good = 1e-9;

/**
 * Maximises λ under columns × amounts + λ × push = load, amounts ≥ 0, and the limits.
 *
 * An answer counts only with its proof: amounts that balance to nine digits, and a motion that bounds λ from above
 * by the same value; or a motion that proves that nothing holds. Without one the library solves it again.
 *
 * @param from the state that solved a program with the same columns.
 */
export function solveProgram(program: Program, lp = linearProgram(program), from?: SimplexState): Answer {
  const resumed = from === undefined ? undefined : answer(lp, resume(lp, copyState(from)));
  return resumed ?? answer(lp, simplex(lp)) ?? byLibrary(lp);
}

/** The claim, if it comes with its proof. */
function answer(lp: LinearProgram, found: Outcome): Answer | undefined {
  if (found.kind === 'infeasible' && provenInfeasible(lp, found.proof))
    return { most: undefined, why: 'cannot stand' };
  if (found.kind === 'optimal') {
    const residual = shortfall(lp, found.amounts);
    const most = at(found.amounts, lp.objective);
    const bound = provenBound(lp, found.duals);
    if (residual <= good && bound !== undefined && Math.abs(bound - most) <= 1e-7 * Math.max(1, most))
      return {
        most,
        amounts: found.amounts.subarray(0, lp.objective),
        motion: found.duals,
        residual,
        state: found.state,
      };
  }
  return undefined;
}

/** The equations, then one row for each limit and one that bounds λ. */
export function linearProgram({ rows, columns, limits, push, load }: Program): LinearProgram {
  const built = columns.map(({ entries }) => [...entries]);
  const right = new Float64Array(rows + limits.length + 1);
  right.set(load);
  limits.forEach((limit, l) => {
    right[rows + l] = limit.most;
    for (const [column, amount] of limit.terms) {
      built[column]?.push([rows + l, amount]);
    }
  });
  right[rows + limits.length] = mostLookedFor;
  const pushing = Array.from(push, (value, row): [number, number] => [row, value]).filter(
    ([, value]) => value !== 0,
  );
  built.push([...pushing, [rows + limits.length, 1]]);
  return {
    equalities: rows,
    columns: built.map((entries) => ({
      rows: Int32Array.from(entries, ([row]) => row),
      values: Float64Array.from(entries, ([, value]) => value),
    })),
    objective: columns.length,
    right,
  };
}

/** The same columns under the load and push of another program: another corner of the ranges. */
export function withLoadOf(lp: LinearProgram, { rows, push, load }: Program): LinearProgram {
  const right = Float64Array.from(lp.right);
  right.set(load);
  const pushing = Array.from(push, (value, row) => ({ value, row })).filter(({ value }) => value !== 0);
  const bound = lp.right.length - 1;
  const columns = [...lp.columns];
  columns[lp.objective] = {
    rows: Int32Array.from([...pushing.map((p) => p.row), bound]),
    values: Float64Array.from([...pushing.map((p) => p.value), 1]),
  };
  return rows === lp.equalities ? { ...lp, columns, right } : lp;
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
  const variables = lp.columns.map((column, j): [number, [number, number][]] => {
    const entries = Array.from(column.rows, (row, e): [number, number] => [row, at(column.values, e)]);
    const balance = entries.reduce((s, [row, value]) => (row < lp.equalities ? s + value : s), 0);
    return [
      j,
      [...entries, [all, balance], ...(j === lp.objective ? [[objective, 1] as [number, number]] : [])],
    ];
  });
  const found = solve(
    { direction: 'maximize', objective, constraints, variables },
    { precision: 1e-10, maxPivots: 4000 },
  );
  if (found.status !== 'optimal') return { most: undefined, why: 'unsolved' };
  const amounts = new Float64Array(lp.columns.length);
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

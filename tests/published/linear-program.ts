import GLPK from 'glpk.js/node';
import highsModule from 'highs';

// Its types take it for a module with a default; Node gives the function itself.
const loadHighs = highsModule as unknown as typeof highsModule.default;

/** Maximize `objective · x` where each row of `rows` · x stands to its right side as it says, and x is not below zero. */
export interface LinearProgram {
  readonly objective: readonly number[];
  readonly rows: readonly {
    readonly of: readonly number[];
    readonly is: '=' | '<=';
    readonly right: number;
  }[];
}

/** The greatest value, or `undefined` where no x fits. */
export type Solver = (program: LinearProgram) => number | undefined;

const sum = (of: readonly number[]): string =>
  of.map((c, i) => `${c < 0 ? '-' : '+'} ${Math.abs(c)} x${i}`).join(' ');

/** HiGHS, by its own text format. */
export async function highs(): Promise<Solver> {
  const solver = await loadHighs();
  return ({ objective, rows }) => {
    const text = [
      'Maximize',
      ` o: ${sum(objective)}`,
      'Subject To',
      ...rows.map((r, i) => ` r${i}: ${sum(r.of)} ${r.is} ${r.right}`),
      'End',
    ].join('\n');
    const found = solver.solve(text, {
      primal_feasibility_tolerance: 1e-10,
      dual_feasibility_tolerance: 1e-10,
    });
    return found.Status === 'Optimal' ? found.ObjectiveValue : undefined;
  };
}

/** GLPK's simplex. */
export async function glpk(): Promise<Solver> {
  const solver = await GLPK();
  const vars = (of: readonly number[]) =>
    of.flatMap((coef, i) => (coef === 0 ? [] : [{ name: `x${i}`, coef }]));
  return ({ objective, rows }) => {
    const { result } = solver.solve(
      {
        name: 'program',
        objective: { direction: solver.GLP_MAX, name: 'o', vars: vars(objective) },
        subjectTo: rows.map((r, i) => ({
          name: `r${i}`,
          vars: vars(r.of),
          bnds: { type: r.is === '=' ? solver.GLP_FX : solver.GLP_UP, ub: r.right, lb: r.right },
        })),
      },
      { msglev: solver.GLP_MSG_OFF, presol: false },
    );
    return result.status === solver.GLP_OPT ? result.z : undefined;
  };
}

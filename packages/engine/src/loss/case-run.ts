import { at, indexAt } from '../resting/at.js';
import type { Motion, Outcome } from '../resting/system.js';
import type { JointCorner } from './components.js';
import type { Loss } from './losses.js';

/** Least and greatest of a force over the places tried in the ranges, N, and the place of the greatest. */
export interface Extremes {
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly worst: Int32Array;
}

/** One case at one stage, over every corner of the ranges and what was tried between them. */
export interface CaseRun extends Extremes {
  readonly loss: Loss | undefined;
  /** Which points of the component stand at this stage. */
  readonly there: readonly boolean[];
  /** The same for the sum over each support's contacts, in the order of `wholes`. */
  readonly whole: Extremes & {
    /** Forces at all points of the component when the sum was greatest. */
    readonly forces: (Float64Array | undefined)[];
    /** Room for the sums of one corner. */
    readonly sums: Float64Array;
  };
  /** The first corner in which it does not rest. */
  fall: { readonly corner: JointCorner; readonly motions: readonly Motion[] } | undefined;
  /** The first corner in which it only balances, on a line or a point. */
  balance: JointCorner | undefined;
  unsolved: boolean;
  smallSteps: boolean;
}

const extremes = (count: number) => ({
  low: new Float64Array(count).fill(Number.POSITIVE_INFINITY),
  high: new Float64Array(count).fill(Number.NEGATIVE_INFINITY),
  worst: new Int32Array(count),
});

export const emptyRun = (there: readonly boolean[], wholes: number, loss: Loss | undefined): CaseRun => ({
  loss,
  there,
  ...extremes(there.length),
  whole: { ...extremes(wholes), forces: [], sums: new Float64Array(wholes) },
  fall: undefined,
  balance: undefined,
  unsolved: false,
  smallSteps: false,
});

/** A case holds when every corner of the ranges rests, and not by balancing. */
export const holds = (run: CaseRun): boolean =>
  run.fall === undefined && run.balance === undefined && !run.unsolved;

/** Takes one corner's answer into a case. `wholeOf` says for each point which whole it belongs to; -1 for none. */
export function record(
  run: CaseRun,
  rest: Outcome,
  { corner, index }: { readonly corner: JointCorner; readonly index: number },
  wholeOf: Int32Array,
): void {
  if (rest.kind === 'unsolved') run.unsolved = true;
  else if (rest.kind === 'falls') run.fall ??= { corner, motions: rest.motions };
  else {
    if (rest.balanced) run.balance ??= corner;
    if (rest.method === 'small steps') run.smallSteps = true;
    widen(run, rest.forces, index);
    const { sums } = run.whole;
    sums.fill(0);
    for (let i = 0; i < rest.forces.length; i++) {
      const whole = indexAt(wholeOf, i);
      if (whole >= 0) sums[whole] = at(sums, whole) + at(rest.forces, i);
    }
    widen(run.whole, sums, index, (e) => {
      run.whole.forces[e] = rest.forces;
    });
  }
}

/** Corners that come to the same are told by the first of them. `told` hears of each place where this one is, from now on. */
function widen(
  { low, high, worst }: Extremes,
  forces: Float64Array,
  index: number,
  told?: (i: number) => void,
): void {
  for (let i = 0; i < forces.length; i++) {
    const force = at(forces, i);
    if (force < at(low, i)) low[i] = force;
    const before = at(high, i);
    if (!(force > before)) continue;
    high[i] = force;
    if (!(force > before * (1 + 1e-9))) continue;
    worst[i] = index;
    told?.(i);
  }
}

/** Where in the ranges each point, and each whole, carries most of all cases: the places, each once. */
export function worstPlaces(
  runs: readonly { readonly asBuilt: CaseRun; readonly losses: readonly CaseRun[] }[],
): readonly number[] {
  const cases = [...new Set(runs)].flatMap(({ asBuilt, losses }) => [asBuilt, ...losses]);
  const most = (pick: (run: CaseRun) => Extremes): readonly number[] => {
    const highest: number[] = [];
    const places: number[] = [];
    for (const run of cases) {
      const { high, worst } = pick(run);
      for (let i = 0; i < high.length; i++) {
        if (!(at(high, i) > (highest[i] ?? 0))) continue;
        highest[i] = at(high, i);
        places[i] = indexAt(worst, i);
      }
    }
    return places;
  };
  const all = [...most((run) => run), ...most((run) => run.whole)];
  return [...new Set(all.filter((place) => place !== undefined))];
}

import { at } from './at.js';
import { solveShifted } from './cholesky.js';

/**
 * The amounts, none below zero, with which columns come nearest to a load: least squares by the active set of
 * Lawson and Hanson (Solving Least Squares Problems, chapter 23).
 *
 * What they leave over, y, is the answer to whether they can hold it at all. It makes no column work forward
 * (columnᵀ y ≤ 0), and the load does (loadᵀ y > 0), unless nothing is left. By Farkas' lemma that proves that no
 * amounts can hold the load; who doubts it can check the two signs.
 */
export function unheldBy(columns: readonly Float64Array[], load: Float64Array): Float64Array | undefined {
  const n = load.length;
  let using: readonly number[] = [];
  let amounts: Float64Array = new Float64Array(0);
  const sizes = Float64Array.from(columns, norm);
  let last = Number.POSITIVE_INFINITY;
  const barred = new Set<number>();
  let next: number | undefined;
  for (let turn = 0; turn < 10 * (columns.length + n); turn++) {
    const left = leftover(columns, using, amounts, load);
    const size = norm(left);
    // Each turn brings it nearer. A column that did not waits until another one has.
    if (size < last * (1 - 1e-14)) barred.clear();
    else if (next !== undefined) barred.add(next);
    last = Math.min(last, size);
    next = size <= 1e-12 * norm(load) ? undefined : steepest(columns, sizes, using, barred, left);
    if (next === undefined) return left;
    ({ using, amounts } = settle(columns, [...using, next], Float64Array.from([...amounts, 0]), load));
  }
  return undefined;
}

function leftover(
  columns: readonly Float64Array[],
  using: readonly number[],
  amounts: Float64Array,
  load: Float64Array,
): Float64Array {
  const left = Float64Array.from(load);
  for (const [p, i] of using.entries()) {
    const column = columns[i];
    if (column === undefined) continue;
    for (let j = 0; j < left.length; j++) left[j] = at(left, j) - at(amounts, p) * at(column, j);
  }
  return left;
}

/** The column, neither used nor barred, that would take up the leftover fastest. */
function steepest(
  columns: readonly Float64Array[],
  sizes: Float64Array,
  using: readonly number[],
  barred: ReadonlySet<number>,
  left: Float64Array,
): number | undefined {
  let best: number | undefined;
  let most = 1e-10 * norm(left);
  for (const [i, column] of columns.entries()) {
    const rate = dot(column, left) / (at(sizes, i) || 1);
    if (rate > most && !using.includes(i) && !barred.has(i)) {
      most = rate;
      best = i;
    }
  }
  return best;
}

/** Least squares on the chosen columns, dropping those whose amount would fall below zero. */
function settle(
  columns: readonly Float64Array[],
  chosen: readonly number[],
  from: Float64Array,
  load: Float64Array,
): { using: readonly number[]; amounts: Float64Array } {
  let using = chosen;
  let amounts = from;
  while (using.length > 0) {
    const wanted = leastSquares(columns, using, load);
    if (wanted.every((w) => w > 0)) return { using, amounts: wanted };
    let step = 1;
    for (let p = 0; p < using.length; p++)
      if (at(wanted, p) <= 0) step = Math.min(step, at(amounts, p) / (at(amounts, p) - at(wanted, p)) || 0);
    const moved = amounts.map((a, p) => a + step * (at(wanted, p) - a));
    const kept = using.map((_, p) => p).filter((p) => at(moved, p) > 1e-14 || at(wanted, p) > 0);
    if (kept.length === using.length) return { using, amounts: moved };
    amounts = Float64Array.from(kept, (p) => at(moved, p));
    const before = using;
    using = kept.map((p) => before[p] ?? -1);
  }
  return { using, amounts };
}

function leastSquares(
  columns: readonly Float64Array[],
  using: readonly number[],
  load: Float64Array,
): Float64Array {
  const n = using.length;
  const normal = new Float64Array(n * n);
  const right = new Float64Array(n);
  const used = using.map((i) => columns[i] ?? new Float64Array(load.length));
  for (const [p, a] of used.entries()) {
    right[p] = dot(a, load);
    for (const [r, b] of used.entries()) normal[p * n + r] = dot(a, b);
  }
  solveShifted(normal, right, n, 1e-15);
  return right;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < a.length; j++) sum += at(a, j) * at(b, j);
  return sum;
}

const norm = (a: Float64Array): number => Math.sqrt(dot(a, a));

import { at } from './at.js';
import { solveShifted } from './cholesky.js';
import type { ScaledSystem } from './scaled-system.js';

/**
 * Looks for a motion that closes no contact and along which the weight sinks: by Farkas' lemma it exists exactly
 * when no set of pushing forces can hold the bodies. A second way to that answer, which shares nothing with the
 * first but the geometry: the pushing forces that come nearest to holding the load (least squares over forces
 * that only push, by Lawson and Hanson's active set). What they cannot hold is that motion.
 *
 * @returns the motion (largest component 1), or `undefined` when the bodies can rest.
 */
export function motionThatFalls(
  s: ScaledSystem,
  present: Uint8Array,
  load: Float64Array,
): Float64Array | undefined {
  const n = load.length;
  const levers = Array.from({ length: s.count }, (_, i) =>
    Float64Array.from({ length: n }, (_, j) => leverOf(s, i, j)),
  );
  let pushing: number[] = [];
  let forces: Float64Array = new Float64Array(0);
  for (let turn = 0; turn < 6 * (s.count + n); turn++) {
    const left = unheld(levers, pushing, forces, load);
    const next = mostClosed(levers, present, pushing, left);
    if (next === undefined) {
      const most = left.reduce((m, v) => Math.max(m, Math.abs(v)), 0);
      const motion = left.map((v) => v / (most || 1));
      return most > 1e-9 && isFalling(s, present, load, motion) ? motion : undefined;
    }
    const grown = [...pushing, next];
    ({ pushing, forces } = shrinkToPushing(levers, grown, Float64Array.from([...forces, 0]), load));
  }
  return undefined;
}

/** The load that the forces leave over. */
function unheld(
  levers: readonly Float64Array[],
  pushing: readonly number[],
  f: Float64Array,
  load: Float64Array,
) {
  const left = Float64Array.from(load);
  for (const [p, i] of pushing.entries()) {
    const lever = levers[i];
    if (lever !== undefined)
      for (let j = 0; j < left.length; j++) left[j] = at(left, j) - at(f, p) * at(lever, j);
  }
  return left;
}

/** The contact that the leftover load would close fastest. */
function mostClosed(
  levers: readonly Float64Array[],
  present: Uint8Array,
  pushing: readonly number[],
  left: Float64Array,
): number | undefined {
  const size = Math.hypot(...left);
  let best: number | undefined;
  let most = 1e-10 * size;
  for (const [i, lever] of levers.entries()) {
    if (present[i] !== 1 || pushing.includes(i)) continue;
    const rate = dot(lever, left) / Math.hypot(...lever);
    if (rate > most) {
      most = rate;
      best = i;
    }
  }
  return best;
}

/** Least squares on the chosen contacts, letting go of those that would pull. */
function shrinkToPushing(
  levers: readonly Float64Array[],
  chosen: readonly number[],
  from: Float64Array,
  load: Float64Array,
): { pushing: number[]; forces: Float64Array } {
  let pushing = [...chosen];
  let forces = from;
  while (pushing.length > 0) {
    const wanted = leastSquares(levers, pushing, load);
    let step = 1;
    for (let p = 0; p < pushing.length; p++)
      if (at(wanted, p) <= 0) step = Math.min(step, at(forces, p) / (at(forces, p) - at(wanted, p)) || 0);
    if (wanted.every((w) => w > 0)) return { pushing, forces: wanted };
    const moved = forces.map((f, p) => f + step * (at(wanted, p) - f));
    const kept = pushing.map((_, p) => p).filter((p) => at(moved, p) > 1e-14);
    if (kept.length === pushing.length) return { pushing, forces: moved };
    forces = Float64Array.from(kept, (p) => at(moved, p));
    pushing = kept.map((p) => pushing[p] ?? -1);
  }
  return { pushing, forces };
}

function leastSquares(
  levers: readonly Float64Array[],
  pushing: readonly number[],
  load: Float64Array,
): Float64Array {
  const n = pushing.length;
  const normal = new Float64Array(n * n);
  const right = new Float64Array(n);
  const column = (p: number) => levers[pushing[p] ?? -1] ?? new Float64Array(0);
  for (let p = 0; p < n; p++) {
    right[p] = dot(column(p), load);
    for (let r = 0; r < n; r++) normal[p * n + r] = dot(column(p), column(r));
  }
  solveShifted(normal, right, n, 1e-15);
  return right;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < a.length; j++) sum += at(a, j) * at(b, j);
  return sum;
}

/** Checks a proof by hand: the motion closes nothing, and the weight sinks along it. */
export function isFalling(
  s: ScaledSystem,
  present: Uint8Array,
  load: Float64Array,
  motion: Float64Array,
): boolean {
  let work = 0;
  for (let j = 0; j < load.length; j++) work += at(load, j) * at(motion, j);
  if (!(work > 1e-9)) return false;
  for (let i = 0; i < s.count; i++) {
    if (present[i] !== 1) continue;
    let closing = 0;
    for (let j = 0; j < load.length; j++) closing += leverOf(s, i, j) * at(motion, j);
    if (!(closing <= 1e-9)) return false;
  }
  return true;
}

/** How much spring `i` closes for one unit of motion `j`. */
function leverOf(s: ScaledSystem, i: number, j: number): number {
  const body = Math.floor(j / 3);
  if (at(s.upper, i) === body) return at(s.levers, 6 * i + (j % 3));
  if (at(s.lower, i) === body) return -at(s.levers, 6 * i + 3 + (j % 3));
  return 0;
}

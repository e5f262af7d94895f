import { residual, tangent } from './assemble.js';
import { solveDense } from './lu.js';
import type { Model } from './model.js';

/** A push of unknown size that moves one point by a given distance. */
export interface Bordered {
  /** What a push of 1 does to the unknowns. */
  readonly direction: Float64Array;
  /** Where the point shall be along the push, counted from q = 0. */
  distance: number;
  /** The size of the push; changed with q. */
  push: number;
}

/** Scaled; out of balance by less than this is in balance. */
const balanced = 1e-9;
const iterations = 16;
const mostJumps = 3;

/**
 * One implicit over-damped step: finds q with R(q) + push * P - c (q - from) = 0, by Newton with backtracking, from
 * the q that is given. Gives way after each iteration.
 *
 * @returns whether it was found. Where not, q and the push are of no use.
 */
export function* dampedStep(
  model: Model,
  q: Float64Array,
  from: Float64Array,
  c: number,
  border: Bordered | undefined,
): Generator<void, boolean> {
  const n = model.unknowns;
  const size = n + (border === undefined ? 0 : 1);
  const matrix = new Float64Array(size * size);
  const now = new Float64Array(size);
  const next = new Float64Array(size);
  const step = new Float64Array(size);
  const tried = new Float64Array(n);
  const balance = (at: Float64Array, push: number, out: Float64Array): number => {
    residual(model, at, out);
    for (let i = 0; i < n; i++) {
      const pushed = border === undefined ? 0 : push * (border.direction[i] as number);
      out[i] = (out[i] as number) + pushed - c * ((at[i] as number) - (from[i] as number));
    }
    if (border !== undefined) out[n] = model.stiffest * (along(border, at) - border.distance);
    return out.reduce((sum, v) => sum + v * v, 0);
  };
  let off = balance(q, border?.push ?? 0, now);
  let jumps = 0;

  const direction = (sticks: boolean): boolean => {
    tangent(model, q, matrix, size, sticks);
    for (let j = 0; j < n; j++) matrix[j * size + j] = (matrix[j * size + j] as number) - c;
    if (border !== undefined)
      for (let j = 0; j < n; j++) {
        matrix[j * size + n] = border.direction[j] as number;
        matrix[n * size + j] = model.stiffest * (border.direction[j] as number);
      }
    for (let j = 0; j < size; j++) step[j] = -(now[j] as number);
    return solveDense(matrix, step, size);
  };
  const take = (part: number, least: number): boolean => {
    for (let j = 0; j < n; j++) tried[j] = (q[j] as number) + part * (step[j] as number);
    const push = (border?.push ?? 0) + part * (step[n] ?? 0);
    const then = balance(tried, push, next);
    if (!(then < off * least || largest(next) <= balanced)) return false;
    q.set(tried);
    now.set(next);
    if (border !== undefined) border.push = push;
    off = then;
    return true;
  };
  const descends = (): boolean => {
    for (let part = 1; part > 1e-4; part /= 2) if (take(part, 1 - 1e-4 * part)) return true;
    return false;
  };

  for (let i = 0; i < iterations; i++) {
    if (largest(now) <= balanced) return true;
    yield;
    if (direction(false) && descends()) continue;
    // Where the true tangent leads nowhere: the one without slip, and then a whole step of the true one, uphill.
    if (direction(true) && descends()) continue;
    if (jumps++ === mostJumps || !direction(false) || !take(1, Number.POSITIVE_INFINITY)) return false;
  }
  return largest(now) <= balanced;
}

/** How far the pushed point is along the push. */
export function along(border: Bordered, q: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < q.length; i++) sum += (border.direction[i] as number) * (q[i] as number);
  return sum;
}

export const largest = (of: Float64Array): number => of.reduce((most, v) => Math.max(most, Math.abs(v)), 0);

import { at } from './at.js';
import { type Factor, solveFactored } from './cholesky.js';
import { addAlong, type ContactState, closingOf, springForce } from './contact-law.js';
import type { ScaledSystem } from './scaled-system.js';

/**
 * One quadratic piece of the energy: which contacts are closed in it, and the factor of their stiffness. Where
 * another load ends in the same piece, its answer is one solution of linear equations.
 */
export interface Piece {
  readonly closed: Uint8Array;
  readonly factor: Factor;
}

/** Keeps the piece in which the last answer lay, for the next case like it. */
export interface Hint {
  piece: Piece | undefined;
  /** Or the motion in which it fell. */
  motion: Float64Array | undefined;
}

/** A contact this near to touching counts as touching: it would carry at once. */
export const touching = 1e-12;

export function pieceAt(s: ScaledSystem, c: ContactState, force: Float64Array, { scale, l }: Factor): Piece {
  const closed = new Uint8Array(s.count);
  for (let i = 0; i < s.count; i++) if (c.present[i] === 1 && at(force, i) >= -touching) closed[i] = 1;
  return { closed, factor: { scale: Float64Array.from(scale), l: Float64Array.from(l) } };
}

/**
 * The answer of a load, if it lies in a piece: closed contacts push, open ones stay open, and all balances. Least
 * energy is unique in its forces, so that an answer that passes is the answer.
 */
export function answerIn(
  piece: Piece,
  s: ScaledSystem,
  c: ContactState,
  load: Float64Array,
): { readonly q: Float64Array; readonly residual: number } | undefined {
  const n = load.length;
  const q = Float64Array.from(load);
  for (let i = 0; i < s.count; i++) {
    if (piece.closed[i] !== 1) continue;
    if (c.present[i] !== 1) return undefined;
    addAlong(s, i, -springForce(s, c, i, 0), q);
  }
  solveFactored(piece.factor, q, n);
  const left = Float64Array.from(load);
  for (let i = 0; i < s.count; i++) {
    if (c.present[i] !== 1) continue;
    const f = springForce(s, c, i, closingOf(s, i, q));
    if (piece.closed[i] === 1 ? f < -touching : f > touching) return undefined;
    if (f > 0) addAlong(s, i, -f, left);
  }
  let residual = 0;
  for (let j = 0; j < n; j++) residual = Math.max(residual, Math.abs(at(left, j)));
  return residual <= 1e-10 ? { q, residual } : undefined;
}

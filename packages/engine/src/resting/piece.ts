import { at } from './at.js';
import { type Factor, solveFactored } from './cholesky.js';
import { addAlong, type ContactState, fillForces } from './contact-law.js';
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

/** Forces out of balance, as shares of all weight. Past `good`, a turn that does not halve them has met the last digit. */
export const enough = 1e-13;
export const good = 1e-9;

/** A contact this near to touching counts as touching: it would carry at once. */
export const touching = 1e-12;

export function pieceAt(s: ScaledSystem, c: ContactState, force: Float64Array, { scale, l }: Factor): Piece {
  const closed = new Uint8Array(s.count);
  for (let i = 0; i < s.count; i++) if (c.present[i] === 1 && at(force, i) >= -touching) closed[i] = 1;
  return { closed, factor: { scale: Float64Array.from(scale), l: Float64Array.from(l) } };
}

/**
 * The answer of a load in a piece, as if what is closed in it pulled too; and whether it is the answer: closed
 * contacts push, open ones stay open, and all balances. Least energy is unique in its forces. Where it is not, it is
 * near. The forces are left in the room.
 *
 * @returns `undefined` where a contact of the piece is no longer there.
 */
export function answerIn(
  piece: Piece,
  s: ScaledSystem,
  c: ContactState,
  load: Float64Array,
): { readonly q: Float64Array; readonly residual: number; readonly holds: boolean } | undefined {
  const n = load.length;
  const q = load.slice();
  for (let i = 0; i < s.count; i++) {
    if (piece.closed[i] !== 1) continue;
    if (c.present[i] !== 1) return undefined;
    const unmoved = at(s.stiffness, i) * at(c.placedAt, i) - at(c.preload, i);
    if (unmoved !== 0) addAlong(s, i, unmoved, q);
  }
  solveFactored(piece.factor, q, n);
  const { left } = s.room;
  for (let turn = 1; ; turn++) {
    const holds = leftBy(piece, s, c, load, q);
    let residual = 0;
    for (let j = 0; j < n; j++) residual = Math.max(residual, Math.abs(at(left, j)));
    if (!holds || residual <= enough || turn === mostTurns)
      return { q, residual, holds: holds && residual <= 1e-11 };
    // The factor is shifted a little: what it leaves over is solved for once more.
    solveFactored(piece.factor, left, n);
    for (let j = 0; j < n; j++) q[j] = at(q, j) + at(left, j);
  }
}

const mostTurns = 4;

/** Fills the room with the forces and what they leave of the load. Returns whether they lie in the piece. */
function leftBy(
  piece: Piece,
  s: ScaledSystem,
  c: ContactState,
  load: Float64Array,
  q: Float64Array,
): boolean {
  const { force, left } = s.room;
  fillForces(s, c, q, force);
  left.set(load);
  let holds = true;
  for (let i = 0; i < s.count; i++) {
    if (c.present[i] !== 1) continue;
    const f = at(force, i);
    if (piece.closed[i] === 1 ? f < -touching : f > touching) holds = false;
    if (f > 0) addAlong(s, i, -f, left);
  }
  return holds;
}

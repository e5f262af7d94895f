import { at } from './at.js';
import { type Factor, solveFactored, withoutShift } from './cholesky.js';
import { addAlong, addForces, type ContactState, closingOf, fillForces } from './contact-law.js';
import type { ScaledSystem } from './scaled-system.js';

/**
 * One quadratic piece of the energy: which contacts are closed in it, and the factor of their stiffness. Where
 * another load ends in the same piece, its answer is one solution of linear equations.
 */
export interface EnergyPiece {
  readonly closed: Uint8Array;
  readonly factor: Factor;
  readonly shift: number;
}

/** Keeps the pieces in which the last answers lay, the last one first, for the next case like it. */
export interface Hint {
  pieces: readonly EnergyPiece[];
  /** Or the motion in which it fell. */
  motion: Float64Array | undefined;
}

/** Forces out of balance, as shares of all weight. Past `good`, a turn that does not halve them has met the last digit. */
export const enough = 1e-13;
export const good = 1e-9;

/** A contact this near to touching counts as touching: it would carry at once. */
export const touching = 1e-12;

export function pieceAt(s: ScaledSystem, c: ContactState, shift: number): EnergyPiece {
  const { force, factor } = s.room;
  const closed = new Uint8Array(s.count);
  for (let i = 0; i < s.count; i++) if (c.present[i] === 1 && at(force, i) >= -touching) closed[i] = 1;
  return { closed, factor: { scale: factor.scale.slice(), l: factor.l.slice() }, shift };
}

/** A load swings between as many pieces as its place has ends. */
const mostPieces = 4;

/** The answer of a load, where it lies in one of the pieces kept. The forces are left in the room. */
export function answerFrom(hint: Hint, s: ScaledSystem, c: ContactState, load: Float64Array) {
  for (const piece of hint.pieces) {
    const found = answerIn(piece, s, c, load);
    if (found === undefined) continue;
    keep(hint, piece);
    return found;
  }
  return undefined;
}

export function keep(hint: Hint, piece: EnergyPiece): void {
  if (hint.pieces[0] !== piece)
    hint.pieces = [piece, ...hint.pieces.filter((p) => p !== piece)].slice(0, mostPieces);
}

/**
 * The answer of a load, if it lies in a piece: closed contacts push, open ones stay open, and all balances. Least
 * energy is unique in its forces, so that an answer that passes is the answer.
 */
function answerIn(
  piece: EnergyPiece,
  s: ScaledSystem,
  c: ContactState,
  load: Float64Array,
): { readonly q: Float64Array; readonly residual: number } | undefined {
  const n = load.length;
  const q = load.slice();
  for (let i = 0; i < s.count; i++) {
    if (piece.closed[i] !== 1) continue;
    if (c.present[i] !== 1) return undefined;
    const unmoved = at(s.stiffness, i) * at(c.placedAt, i) - at(c.preload, i);
    if (unmoved !== 0) addAlong(s, i, unmoved, q);
  }
  const { left, rate, force } = s.room;
  solveFactored(piece.factor, q, n);
  withoutShift(piece.factor, q, n, piece.shift, left);
  fillForces(s, c, q, force);
  for (let turn = 1; leftBy(piece, s, c, load); turn++) {
    let residual = 0;
    for (let j = 0; j < n; j++) residual = Math.max(residual, Math.abs(at(left, j)));
    if (residual <= enough || turn === mostTurns) return residual <= 1e-11 ? { q, residual } : undefined;
    // What rounding leaves over is solved for once more.
    solveFactored(piece.factor, left, n);
    for (let j = 0; j < n; j++) q[j] = at(q, j) + at(left, j);
    for (let i = 0; i < s.count; i++) if (c.present[i] === 1) rate[i] = closingOf(s, i, left);
    addForces(s, c, rate, force);
  }
  return undefined;
}

const mostTurns = 4;

/** Fills the room with what the forces in it leave of the load. Returns whether they lie in the piece. */
function leftBy(piece: EnergyPiece, s: ScaledSystem, c: ContactState, load: Float64Array): boolean {
  const { force, left } = s.room;
  left.set(load);
  for (let i = 0; i < s.count; i++) {
    if (c.present[i] !== 1) continue;
    const f = at(force, i);
    if (piece.closed[i] === 1 ? f < -touching : f > touching) return false;
    if (f > 0) addAlong(s, i, -f, left);
  }
  return true;
}

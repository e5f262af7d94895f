import { at } from './at.js';
import { keepUnheld, solveShifted } from './cholesky.js';
import { addAlong, addStiffness, type ContactState, closingOf, fillForces } from './contact-law.js';
import { lineSearch } from './line-search.js';
import { mendForces } from './mend-forces.js';
import { enough, good, touching } from './piece.js';
import type { Room } from './room.js';
import type { ScaledSystem } from './scaled-system.js';

export type Descent =
  | { readonly kind: 'settled'; readonly q: Float64Array; readonly residual: number; readonly free: number }
  /** The energy falls without end along this motion: nothing stops it. */
  | { readonly kind: 'falling'; readonly along: Float64Array }
  | { readonly kind: 'stuck' };

/** Shift of the usual descent: as small as keeps a body that is free to roll from an endless step. */
export const least = 1e-12;

/**
 * Least energy of one-way springs under a load: Newton's method on the contacts that are closed, with an exact
 * line search. The energy is convex and made of quadratic pieces, so that the method ends after a few steps.
 *
 * @param shift small enough to leave Newton's speed, large enough that a body free to roll has a finite step.
 */
export function descend(
  s: ScaledSystem,
  c: ContactState,
  load: Float64Array,
  start: Float64Array,
  { shift, steps, room }: { readonly shift: number; readonly steps: number; readonly room: Room },
): Descent {
  const n = load.length;
  const q = Float64Array.from(start);
  const { h, step, factor } = room;
  let last = Number.POSITIVE_INFINITY;
  let whole = false;
  for (let turn = 0; turn < steps; turn++) {
    fillForces(s, c, q, room.force);
    const residual = prepare(s, c, load, room);
    const free = solveShifted(h, step, n, shift, factor);
    if (residual <= enough) return { kind: 'settled', q, residual, free };
    const stalls = residual > last / 2;
    const loose = free > 0 ? looseMotion(room, n, shift) : undefined;
    // A whole step of the usual descent ends in balance, but for rounding.
    const byRounding = whole && stalls && loose === undefined && shift <= least;
    const mended = byRounding ? mendForces(s, c, load, residual, room) : undefined;
    if (mended !== undefined) return { kind: 'settled', q, residual: mended, free };
    if (stalls && residual <= good) return { kind: 'settled', q, residual, free };
    last = residual;
    if (loose !== undefined) step.set(loose);
    for (let i = 0; i < s.count; i++) if (c.present[i] === 1) room.rate[i] = closingOf(s, i, step);
    whole = loose === undefined && keepsContacts(s, c, room);
    const t = whole ? 1 : lineSearch(s, c, load, room);
    if (t === Number.POSITIVE_INFINITY) return { kind: 'falling', along: unit(step) };
    if (!Number.isFinite(t) || t <= 0) return { kind: 'stuck' };
    for (let j = 0; j < n; j++) q[j] = at(q, j) + t * at(step, j);
  }
  return { kind: 'stuck' };
}

/** Fills the stiffness of what touches, and the downhill force. Returns the largest force out of balance. */
function prepare(
  s: ScaledSystem,
  c: ContactState,
  load: Float64Array,
  { h, step: downhill, force }: Room,
): number {
  h.fill(0);
  downhill.set(load);
  for (let i = 0; i < s.count; i++) {
    const f = at(force, i);
    if (c.present[i] !== 1 || f < -touching) continue;
    addStiffness(s, i, h, load.length);
    if (f > 0) addAlong(s, i, -f, downhill);
  }
  let residual = 0;
  for (let j = 0; j < load.length; j++) residual = Math.max(residual, Math.abs(at(downhill, j)));
  return residual;
}

/** Whether the whole step opens and closes nothing: then it ends at the least energy of this quadratic piece. */
function keepsContacts(s: ScaledSystem, c: ContactState, { force, rate }: Room): boolean {
  for (let i = 0; i < s.count; i++) {
    if (c.present[i] !== 1) continue;
    const f = at(force, i);
    const after = f + at(s.stiffness, i) * at(rate, i);
    if (f < -touching ? after > 0 : after < 0) return false;
  }
  return true;
}

/** The part of a step that no closed contact resists; `undefined` where the load does not work along it. */
function looseMotion({ h, step, factor }: Room, n: number, shift: number) {
  const v = Float64Array.from(step);
  keepUnheld(h, v, n, shift, factor);
  const most = v.reduce((m, x) => Math.max(m, Math.abs(x)), 0);
  return most * shift > 1e-10 ? v : undefined;
}

function unit(v: Float64Array): Float64Array {
  const most = v.reduce((m, x) => Math.max(m, Math.abs(x)), 0) || 1;
  return v.map((x) => x / most);
}

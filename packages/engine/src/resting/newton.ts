import { at } from './at.js';
import { type Factor, factorSpace, solveShifted } from './cholesky.js';
import { addAlong, addStiffness, type ContactState, closingOf, springForce } from './contact-law.js';
import type { ScaledSystem } from './scaled-system.js';

export type Descent =
  | { readonly kind: 'settled'; readonly q: Float64Array; readonly residual: number; readonly free: number }
  /** The energy falls without end along this motion: nothing stops it. */
  | { readonly kind: 'falling'; readonly along: Float64Array }
  | { readonly kind: 'stuck' };

/** Shares of all weight. Past `good`, a turn that does not halve what is left has met the last digit. */
const enough = 1e-11;
const good = 1e-9;
/** A contact this near to touching counts as touching: it would carry at once. */
const touching = 1e-12;

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
  { shift, steps }: { readonly shift: number; readonly steps: number },
): Descent {
  const n = load.length;
  const q = Float64Array.from(start);
  const h = new Float64Array(n * n);
  const step = new Float64Array(n);
  const room = factorSpace(n);
  let last = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < steps; turn++) {
    const residual = prepare(s, c, load, q, h, step);
    const free = solveShifted(h, step, n, shift, room);
    if (residual <= enough || (residual <= good && residual > last / 2))
      return { kind: 'settled', q, residual, free };
    last = residual;
    const loose = free > 0 ? looseMotion(h, step, n, shift, room) : undefined;
    if (loose !== undefined) step.set(loose);
    else if (keepsContacts(s, c, q, step)) {
      for (let j = 0; j < n; j++) q[j] = at(q, j) + at(step, j);
      continue;
    }
    const t = lineSearch(s, c, load, q, step);
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
  q: Float64Array,
  h: Float64Array,
  downhill: Float64Array,
): number {
  h.fill(0);
  downhill.set(load);
  for (let i = 0; i < s.count; i++) {
    if (c.present[i] !== 1) continue;
    const f = springForce(s, c, i, closingOf(s, i, q));
    if (f < -touching) continue;
    addStiffness(s, i, h, load.length);
    if (f > 0) addAlong(s, i, -f, downhill);
  }
  let residual = 0;
  for (let j = 0; j < load.length; j++) residual = Math.max(residual, Math.abs(at(downhill, j)));
  return residual;
}

/** Whether the whole step opens and closes nothing: then it ends at the least energy of this quadratic piece. */
function keepsContacts(s: ScaledSystem, c: ContactState, q: Float64Array, step: Float64Array): boolean {
  for (let i = 0; i < s.count; i++) {
    if (c.present[i] !== 1) continue;
    const f = springForce(s, c, i, closingOf(s, i, q));
    const after = f + at(s.stiffness, i) * closingOf(s, i, step);
    if (f < -touching ? after > 0 : after < 0) return false;
  }
  return true;
}

/** Where along the step the energy is least. Its slope is a rising line broken where contacts close or open. */
function lineSearch(
  s: ScaledSystem,
  c: ContactState,
  load: Float64Array,
  q: Float64Array,
  step: Float64Array,
): number {
  let slope = 0;
  for (let j = 0; j < load.length; j++) slope -= at(load, j) * at(step, j);
  let bend = 0;
  const breaks: { at: number; slope: number; bend: number }[] = [];
  for (let i = 0; i < s.count; i++) {
    if (c.present[i] !== 1) continue;
    const rate = closingOf(s, i, step);
    if (Math.abs(rate) < 1e-300) {
      const f = springForce(s, c, i, closingOf(s, i, q));
      if (f > 0) slope += f * rate;
      continue;
    }
    const k = at(s.stiffness, i);
    const f = springForce(s, c, i, closingOf(s, i, q));
    const zero = -f / (k * rate);
    if (f > 0 || (f === 0 && rate > 0)) {
      slope += f * rate;
      bend += k * rate * rate;
      if (rate < 0) breaks.push({ at: zero, slope: -f * rate, bend: -k * rate * rate });
    } else if (rate > 0) breaks.push({ at: zero, slope: f * rate, bend: k * rate * rate });
  }
  breaks.sort((a, b) => a.at - b.at);
  for (const b of breaks) {
    if (slope + bend * b.at >= 0) break;
    slope += b.slope;
    bend += b.bend;
  }
  if (slope >= 0) return 0;
  return bend > 1e-18 * Math.abs(slope) ? -slope / bend : Number.POSITIVE_INFINITY;
}

/**
 * The part of a step that no closed contact resists: shrinking the step twice by `shift (H + shift)⁻¹` leaves
 * only what H does not hold. `undefined` where the load does not work along it.
 */
function looseMotion(h: Float64Array, step: Float64Array, n: number, shift: number, room: Factor) {
  const v = Float64Array.from(step);
  for (let pass = 0; pass < 2; pass++) {
    for (let i = 0; i < n; i++) v[i] = at(v, i) * shift * (at(h, i * n + i) || 1);
    solveShifted(h, v, n, shift, room);
  }
  const most = v.reduce((m, x) => Math.max(m, Math.abs(x)), 0);
  return most * shift > 1e-10 ? v : undefined;
}

function unit(v: Float64Array): Float64Array {
  const most = v.reduce((m, x) => Math.max(m, Math.abs(x)), 0) || 1;
  return v.map((x) => x / most);
}

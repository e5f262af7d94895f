import { at, indexAt } from './at.js';
import type { ScaledSystem } from './scaled-system.js';

/** What each spring is at one moment, scaled. `present` 0 means lost, removed or not yet placed. */
export interface ContactState {
  readonly present: Uint8Array;
  readonly preload: Float64Array;
  readonly placedAt: Float64Array;
}

/** Closing of spring `i` when the bodies have moved by `q` (sinking and two slopes a body). */
export function closingOf(s: ScaledSystem, i: number, q: Float64Array): number {
  const u = indexAt(s.upper, i);
  const l = indexAt(s.lower, i);
  let d = 0;
  if (u >= 0)
    d +=
      at(q, 3 * u) + at(s.levers, 6 * i + 1) * at(q, 3 * u + 1) + at(s.levers, 6 * i + 2) * at(q, 3 * u + 2);
  if (l >= 0)
    d -=
      at(q, 3 * l) + at(s.levers, 6 * i + 4) * at(q, 3 * l + 1) + at(s.levers, 6 * i + 5) * at(q, 3 * l + 2);
  return d;
}

/** preload + stiffness × (closing − closing at placing), before it is cut off at zero. */
const springForce = (s: ScaledSystem, c: ContactState, i: number, closing: number): number =>
  at(c.preload, i) + at(s.stiffness, i) * (closing - at(c.placedAt, i));

/** The force of every spring that is there, before it is cut off at zero. The others' places are left as they are. */
export function fillForces(s: ScaledSystem, c: ContactState, q: Float64Array, force: Float64Array): void {
  for (let i = 0; i < s.count; i++)
    if (c.present[i] === 1) force[i] = springForce(s, c, i, closingOf(s, i, q));
}

/** Adds to the forces what a further motion does to them, one that closes each spring by `rate`. */
export function addForces(s: ScaledSystem, c: ContactState, rate: Float64Array, force: Float64Array): void {
  for (let i = 0; i < s.count; i++)
    if (c.present[i] === 1) force[i] = at(force, i) + at(s.stiffness, i) * at(rate, i);
}

/** Adds `factor × lever` of spring `i` to a vector over the bodies. */
export function addAlong(s: ScaledSystem, i: number, factor: number, to: Float64Array): void {
  const u = indexAt(s.upper, i);
  const l = indexAt(s.lower, i);
  for (let a = 0; a < 3; a++) {
    if (u >= 0) to[3 * u + a] = at(to, 3 * u + a) + factor * at(s.levers, 6 * i + a);
    if (l >= 0) to[3 * l + a] = at(to, 3 * l + a) - factor * at(s.levers, 6 * i + 3 + a);
  }
}

/**
 * Adds `k · lever · leverᵀ` of spring `i` to the stiffness matrix over the bodies (n = 3 × bodies). The lower
 * triangle alone: the matrix is symmetric.
 */
export function addStiffness(s: ScaledSystem, i: number, h: Float64Array, n: number): void {
  const u = indexAt(s.upper, i);
  const l = indexAt(s.lower, i);
  const k = at(s.stiffness, i);
  if (u >= 0) addBlock(s.levers, 6 * i, 6 * i, k, h, 3 * u * n + 3 * u, n, true);
  if (l < 0) return;
  addBlock(s.levers, 6 * i + 3, 6 * i + 3, k, h, 3 * l * n + 3 * l, n, true);
  if (u > l) addBlock(s.levers, 6 * i, 6 * i + 3, -k, h, 3 * u * n + 3 * l, n, false);
  else if (u >= 0) addBlock(s.levers, 6 * i + 3, 6 * i, -k, h, 3 * l * n + 3 * u, n, false);
}

/** Adds k · a · bᵀ of two lever triples at a corner of the matrix; of a block on the diagonal, its lower half. */
function addBlock(
  levers: Float64Array,
  a: number,
  b: number,
  k: number,
  h: Float64Array,
  corner: number,
  n: number,
  diagonal: boolean,
): void {
  for (let p = 0; p < 3; p++) {
    const left = k * at(levers, a + p);
    const end = diagonal ? p + 1 : 3;
    for (let r = 0; r < end; r++) {
      const e = corner + p * n + r;
      h[e] = at(h, e) + left * at(levers, b + r);
    }
  }
}

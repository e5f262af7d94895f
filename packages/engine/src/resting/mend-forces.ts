import { at } from './at.js';
import { solveFactored } from './cholesky.js';
import { addAlong, addForces, type ContactState, closingOf } from './contact-law.js';
import { enough, touching } from './piece.js';
import type { Room } from './room.js';
import type { ScaledSystem } from './scaled-system.js';

const mostTurns = 4;

/** Mending changes forces by about what was out of balance. Where it changes them by more times as much, it has failed. */
const mostChange = 100;

/** By how many times as much as `roundingOf` says: bodies tilt, and what is far from a soft contact moves farther yet. */
const mostRoundings = 1000;

/** Balance to the last digit of the forces, as a share of all weight. */
const balanced = 1e-12;

/**
 * Brings forces into balance that are out of it by rounding alone.
 *
 * The force of a stiff contact between bodies that have moved far on soft ones is a small difference of large motions.
 * Read from the places of the bodies it lacks its last digits, and no further motion brings them back. So the forces
 * that a last small motion adds are added to the forces themselves.
 *
 * @param residual the largest force out of balance, as a share of all weight. The step that would take it away stands
 *   in the room, with its factor and the forces.
 * @returns what is left out of balance; `undefined`, and the forces as they were, where that did not do.
 */
export function mendForces(
  s: ScaledSystem,
  c: ContactState,
  load: Float64Array,
  residual: number,
  { step, rate, force, factor }: Room,
): number | undefined {
  if (residual > mostRoundings * roundingOf(s, c, force)) return undefined;
  const before = force.slice();
  const left = step.slice();
  let last = residual;
  for (let turn = 0; turn < mostTurns; turn++) {
    for (let i = 0; i < s.count; i++) if (c.present[i] === 1) rate[i] = closingOf(s, i, left);
    addForces(s, c, rate, force);
    const now = keepsSigns(c, before, force) ? leftOver(s, c, load, force, left) : Number.NaN;
    if (!(now <= last / 2)) break;
    last = now;
    if (last <= enough) break;
    solveFactored(factor, left, left.length);
  }
  if (last <= balanced && changeOf(c, before, force) <= mostChange * residual) return last;
  force.set(before);
  return undefined;
}

/**
 * What one rounding of a motion can do to a force: the stiffest contact's, where bodies have moved as far as the contact
 * that is pressed together most. A body that is free to roll may be any distance away: what comes of that is no rounding.
 */
function roundingOf(s: ScaledSystem, c: ContactState, force: Float64Array): number {
  let [farthest, stiffest] = [0, 0];
  for (let i = 0; i < s.count; i++) {
    if (c.present[i] !== 1) continue;
    farthest = Math.max(farthest, at(force, i) / at(s.stiffness, i));
    stiffest = Math.max(stiffest, at(s.stiffness, i));
  }
  return Number.EPSILON * farthest * stiffest;
}

/** Whether what was closed is closed, and what was open is open. */
function keepsSigns(c: ContactState, before: Float64Array, after: Float64Array): boolean {
  return before.every((f, i) => c.present[i] !== 1 || f >= -touching === at(after, i) >= -touching);
}

/** Fills the forces out of balance, and returns the largest. */
function leftOver(
  s: ScaledSystem,
  c: ContactState,
  load: Float64Array,
  force: Float64Array,
  left: Float64Array,
): number {
  left.set(load);
  for (let i = 0; i < s.count; i++)
    if (c.present[i] === 1 && at(force, i) > 0) addAlong(s, i, -at(force, i), left);
  return left.reduce((most, f) => Math.max(most, Math.abs(f)), 0);
}

const changeOf = (c: ContactState, before: Float64Array, after: Float64Array): number =>
  before.reduce((most, f, i) => (c.present[i] === 1 ? Math.max(most, Math.abs(at(after, i) - f)) : most), 0);

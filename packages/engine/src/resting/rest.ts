import { at } from './at.js';
import { type ContactState, closingOf } from './contact-law.js';
import { descend, least } from './newton.js';
import { onlyBalances } from './only-balances.js';
import { answerFrom, type Hint, keep, pieceAt, touching } from './piece.js';
import { isFalling, motionThatFalls } from './proof-of-falling.js';
import { answerSpace } from './room.js';
import { type ScaledSystem, scaledSystem } from './scaled-system.js';
import type { Memory, Motion, Outcome, Rest, RestingSystem, Rests } from './system.js';

/**
 * How the bodies come to rest: the least of Σ f²/2k − Σ W (z + a x + b y) over the closed contacts, where
 * f = preload + k (closing − closing at placing).
 *
 * Says that a body falls only with a proof that was checked by substitution: a motion along which its weight
 * sinks and no contact closes.
 *
 * @param memory one for each spring; left out, everything carried from the start.
 * @param lost springs that are not there.
 */
export function rest(
  system: RestingSystem,
  memory: readonly (Memory | undefined)[] = [],
  lost: ReadonlySet<string> = new Set(),
): Rest {
  const scaled = scaledSystem(system);
  const state = contactState(scaled, memory);
  system.springs.forEach((s, i) => {
    if (lost.has(s.id)) state.present[i] = 0;
  });
  const found = restScaled(scaled, state, scaled.load, new Float64Array(scaled.load.length));
  return found.kind === 'rests' ? { ...found, closings: closingsOf(scaled, found.q) } : found;
}

/** How far each spring has closed, m. */
export const closingsOf = (s: ScaledSystem, q: Float64Array): Float64Array =>
  Float64Array.from({ length: s.count }, (_, i) => closingOf(s, i, q) * s.length);

export function contactState(s: ScaledSystem, memory: readonly (Memory | undefined)[]): ContactState {
  return {
    present: new Uint8Array(s.count).fill(1),
    preload: Float64Array.from({ length: s.count }, (_, i) => (memory[i]?.preload ?? 0) / s.force),
    placedAt: Float64Array.from({ length: s.count }, (_, i) => (memory[i]?.closing ?? 0) / s.length),
  };
}

/**
 * The same on a system scaled once, from a start near the answer.
 *
 * @param hint where a case like this one ended: tried first, and kept up to date.
 */
export function restScaled(
  s: ScaledSystem,
  state: ContactState,
  load: Float64Array,
  start: Float64Array,
  hint?: Hint,
): Outcome {
  const { room } = s;
  const known = hint === undefined ? undefined : answerFrom(hint, s, state, load);
  if (known !== undefined) return resting(s, state, { ...known, free: 0 }, 'newton');
  const falls = (motion: Float64Array): Outcome => {
    if (hint !== undefined) hint.motion = motion;
    return { kind: 'falls', motions: motionsOf(s, motion) };
  };
  if (hint?.motion !== undefined && isFalling(s, state.present, load, hint.motion)) return falls(hint.motion);
  const quick = descend(s, state, load, start, { shift: least, steps: 40, room });
  if (quick.kind === 'settled') {
    if (hint !== undefined && quick.free === 0) keep(hint, pieceAt(s, state, least));
    return resting(s, state, quick, 'newton');
  }
  if (quick.kind === 'falling' && isFalling(s, state.present, load, quick.along)) return falls(quick.along);
  const falling = motionThatFalls(s, state.present, load);
  if (falling !== undefined) return falls(falling);
  for (const shift of [1e-8, 1e-5, 1e-3]) {
    const slow = descend(s, state, load, new Float64Array(load.length), { shift, steps: 300, room });
    if (slow.kind === 'settled') return resting(s, state, slow, 'small steps');
  }
  return { kind: 'unsolved' };
}

/** A share of all weight: less than this is the dust of the sums, and a contact that only touches. */
const dust = 1e-11;

/** The forces stand in the room. */
function resting(
  s: ScaledSystem,
  state: ContactState,
  found: { readonly q: Float64Array; readonly residual: number; readonly free: number },
  method: 'newton' | 'small steps',
): Rests {
  const forces = answerSpace(s.room);
  let touches = false;
  for (let i = 0; i < s.count; i++) {
    const f = at(s.room.force, i);
    if (state.present[i] !== 1) continue;
    if (f > dust) forces[i] = f * s.force;
    else touches ||= f >= -touching;
  }
  const balanced = found.free > 0 || (touches && onlyBalances(s, state, s.room.force, { dust, touching }));
  return { kind: 'rests', forces, q: found.q, balanced, method, residual: found.residual };
}

function motionsOf(s: ScaledSystem, along: Float64Array): readonly Motion[] {
  return s.bodies.flatMap((body, b) => {
    const frame = s.frames[b];
    if (frame === undefined) return [];
    const alongX = at(along, 3 * b + 1) / frame.reach;
    const alongY = at(along, 3 * b + 2) / frame.reach;
    const sinking = at(along, 3 * b) - alongX * frame.x - alongY * frame.y;
    return sinking === 0 && alongX === 0 && alongY === 0 ? [] : [{ body, sinking, alongX, alongY }];
  });
}

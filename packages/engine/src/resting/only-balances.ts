import { at } from './at.js';
import { type Factor, factorSpace, keepUnheld, solveShifted } from './cholesky.js';
import { addStiffness, type ContactState, closingOf } from './contact-law.js';
import type { ScaledSystem } from './scaled-system.js';

const shift = 1e-12;

/** A contact that a motion of size one closes by less than this does not resist it. */
const hair = 1e-9;

/**
 * Whether bodies that are in balance may move without any contact resisting: a motion along which no pushing
 * contact closes or opens, and no contact that only touches closes. A contact that merely touches holds one way
 * and not the other: it is no reason to say that a body rests.
 *
 * Where two such motions or more are left by what pushes, it says yes without a closer look.
 *
 * @param force of each spring before it is cut off at zero, as a share of all weight.
 * @param dust a force no greater than this only touches.
 * @param touching a force below minus this is a gap.
 */
export function onlyBalances(
  s: ScaledSystem,
  c: ContactState,
  force: Float64Array,
  { dust, touching }: { readonly dust: number; readonly touching: number },
): boolean {
  const touches: number[] = [];
  for (let i = 0; i < s.count; i++)
    if (c.present[i] === 1 && at(force, i) <= dust && at(force, i) >= -touching) touches.push(i);
  const n = 3 * s.bodies.length;
  const h = new Float64Array(n * n);
  for (let i = 0; i < s.count; i++) if (c.present[i] === 1 && at(force, i) > dust) addStiffness(s, i, h, n);
  const factor = factorSpace(n);
  const free = solveShifted(h, new Float64Array(n), n, shift, factor);
  if (free !== 1) return free > 1;
  const motion = unheldMotion(h, n, factor);
  return [1, -1].some((way) => touches.every((i) => way * closingOf(s, i, motion) <= hair));
}

/** The one motion that a stiffness does not hold, of size one. */
function unheldMotion(h: Float64Array, n: number, factor: Factor): Float64Array {
  let clearest = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    const motion = new Float64Array(n);
    motion[k] = 1;
    keepUnheld(h, motion, n, shift, factor);
    if (sizeOf(motion) > sizeOf(clearest)) clearest = motion;
  }
  const size = sizeOf(clearest) || 1;
  return clearest.map((x) => x / size);
}

const sizeOf = (v: Float64Array): number => v.reduce((most, x) => Math.max(most, Math.abs(x)), 0);

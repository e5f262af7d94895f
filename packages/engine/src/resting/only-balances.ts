import { at } from './at.js';
import { factorSpace, solveShifted } from './cholesky.js';
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
  const free = freeMotions(h, n);
  if (free.length !== 1) return free.length > 1;
  return free.some((motion) =>
    [1, -1].some((way) => touches.every((i) => way * closingOf(s, i, motion) <= hair)),
  );
}

/** As many motions as a stiffness does not hold, each of size one; of more than one, the first two found. */
function freeMotions(h: Float64Array, n: number): readonly Float64Array[] {
  const factor = factorSpace(n);
  const free = solveShifted(h, new Float64Array(n), n, shift, factor);
  if (free === 0) return [];
  const found = Array.from({ length: n }, (_, k) => looseFrom(h, n, k)).filter((v) => v !== undefined);
  const most = found.reduce((best, v) => (sizeOf(v) > sizeOf(best) ? v : best), new Float64Array(n));
  const first = most.map((x) => x / (sizeOf(most) || 1));
  return free === 1 ? [first] : [first, first];
}

/** The part of the k-th motion that the stiffness does not hold. */
function looseFrom(h: Float64Array, n: number, k: number): Float64Array | undefined {
  const v = new Float64Array(n);
  v[k] = 1;
  for (let pass = 0; pass < 2; pass++) {
    for (let i = 0; i < n; i++) v[i] = at(v, i) * shift * (at(h, i * n + i) || 1);
    solveShifted(h, v, n, shift);
  }
  return v.every(Number.isFinite) ? v : undefined;
}

const sizeOf = (v: Float64Array): number => v.reduce((most, x) => Math.max(most, Math.abs(x)), 0);

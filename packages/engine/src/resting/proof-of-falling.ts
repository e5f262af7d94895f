import { at, indexAt } from './at.js';
import { unheldBy } from './nearest-hold.js';
import type { ScaledSystem } from './scaled-system.js';

/**
 * Looks for a motion that closes no contact and along which the weight sinks: it exists exactly when no set of
 * pushing forces can hold the bodies. A second way to that answer, which shares nothing with the first but the
 * geometry: the load that pushing forces must leave over.
 *
 * @returns the motion (largest component 1), or `undefined` when the bodies can rest.
 */
export function motionThatFalls(
  s: ScaledSystem,
  present: Uint8Array,
  load: Float64Array,
): Float64Array | undefined {
  // Counted by its own weight, a light body beside a heavy one is not lost in rounding; counted alike, a long
  // chain of them is not. Either proof will do: each is checked.
  const own = Float64Array.from(load, (_, j) => 1 / (at(load, 3 * Math.floor(j / 3)) || 1));
  return tryWith(own, s, present, load) ?? tryWith(own.fill(1), s, present, load);
}

function tryWith(
  scale: Float64Array,
  s: ScaledSystem,
  present: Uint8Array,
  load: Float64Array,
): Float64Array | undefined {
  const levers: Float64Array[] = [];
  for (let i = 0; i < s.count; i++)
    if (present[i] === 1) levers.push(scale.map((k, j) => k * leverOf(s, i, j)));
  const left = unheldBy(
    levers,
    scale.map((k, j) => k * at(load, j)),
  )?.map((v, j) => v * at(scale, j));
  const most = left?.reduce((m, v) => Math.max(m, Math.abs(v)), 0) ?? 0;
  if (left === undefined || !(most > 0)) return undefined;
  const motion = left.map((v) => v / most);
  return isFalling(s, present, load, motion) ? motion : undefined;
}

/** Checks a proof by hand: the motion closes nothing, and the weight sinks along it. */
export function isFalling(
  s: ScaledSystem,
  present: Uint8Array,
  load: Float64Array,
  motion: Float64Array,
): boolean {
  let work = 0;
  for (let j = 0; j < load.length; j++) work += at(load, j) * at(motion, j);
  if (!(work > 1e-9)) return false;
  for (let i = 0; i < s.count; i++) {
    if (present[i] !== 1) continue;
    let closing = 0;
    for (let j = 0; j < load.length; j++) closing += leverOf(s, i, j) * at(motion, j);
    if (!(closing <= 1e-9)) return false;
  }
  return true;
}

/** How much spring `i` closes for one unit of motion `j`. */
function leverOf(s: ScaledSystem, i: number, j: number): number {
  const body = Math.floor(j / 3);
  if (indexAt(s.upper, i) === body) return at(s.levers, 6 * i + (j % 3));
  if (indexAt(s.lower, i) === body) return -at(s.levers, 6 * i + 3 + (j % 3));
  return 0;
}

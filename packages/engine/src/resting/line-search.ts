import { at, indexAt } from './at.js';
import type { ContactState } from './contact-law.js';
import type { Breaks } from './room.js';
import type { ScaledSystem } from './scaled-system.js';

/**
 * Where along the step the energy is least; endless where it falls without end. Its slope is a rising line, broken
 * where contacts close or open.
 */
export function lineSearch(
  s: ScaledSystem,
  c: ContactState,
  load: Float64Array,
  {
    step,
    force,
    rate: rates,
    breaks,
  }: {
    readonly step: Float64Array;
    readonly force: Float64Array;
    readonly rate: Float64Array;
    readonly breaks: Breaks;
  },
): number {
  let slope = 0;
  for (let j = 0; j < load.length; j++) slope -= at(load, j) * at(step, j);
  let bend = 0;
  let count = 0;
  for (let i = 0; i < s.count; i++) {
    if (c.present[i] !== 1) continue;
    const rate = at(rates, i);
    if (rate === 0) continue;
    const f = at(force, i);
    const k = at(s.stiffness, i);
    const closed = f > 0 || (f === 0 && rate > 0);
    if (closed) {
      slope += f * rate;
      bend += k * rate * rate;
    }
    if (closed !== rate < 0) continue;
    breaks.at[count] = -f / (k * rate);
    breaks.slope[count] = (closed ? -1 : 1) * f * rate;
    breaks.bend[count] = (closed ? -1 : 1) * k * rate * rate;
    breaks.heap[count] = count++;
  }
  for (let b = (count >> 1) - 1; b >= 0; b--) sink(breaks, b, count);
  while (count > 0) {
    const nearest = indexAt(breaks.heap, 0);
    if (slope + bend * at(breaks.at, nearest) >= 0) break;
    slope += at(breaks.slope, nearest);
    bend += at(breaks.bend, nearest);
    breaks.heap[0] = indexAt(breaks.heap, --count);
    sink(breaks, 0, count);
  }
  if (slope >= 0) return 0;
  return bend > 1e-18 * Math.abs(slope) ? -slope / bend : Number.POSITIVE_INFINITY;
}

/** Lets a break sink until none below it is nearer; of equal ones the first found stays on top. */
function sink({ at: place, heap }: Breaks, from: number, count: number): void {
  const nearer = (a: number, b: number) => {
    const [x, y] = [at(place, a), at(place, b)];
    return x < y || (x === y && a < b);
  };
  const moved = indexAt(heap, from);
  let hole = from;
  for (;;) {
    let below = 2 * hole + 1;
    if (below >= count) break;
    if (below + 1 < count && nearer(indexAt(heap, below + 1), indexAt(heap, below))) below++;
    if (!nearer(indexAt(heap, below), moved)) break;
    heap[hole] = indexAt(heap, below);
    hole = below;
  }
  heap[hole] = moved;
}

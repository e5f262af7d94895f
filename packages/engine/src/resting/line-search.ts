import { at } from './at.js';
import type { ContactState } from './contact-law.js';
import type { ScaledSystem } from './scaled-system.js';

/** Where along a step contacts open or close, and what that does to the slope and the bend of the energy. */
export interface Breaks {
  readonly at: Float64Array;
  readonly slope: Float64Array;
  readonly bend: Float64Array;
}

export const breaksFor = (count: number): Breaks => ({
  at: new Float64Array(count),
  slope: new Float64Array(count),
  bend: new Float64Array(count),
});

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
    if (closed === rate < 0)
      insert(breaks, count++, -f / (k * rate), closed ? -1 : 1, f * rate, k * rate * rate);
  }
  for (let b = 0; b < count; b++) {
    if (slope + bend * at(breaks.at, b) >= 0) break;
    slope += at(breaks.slope, b);
    bend += at(breaks.bend, b);
  }
  if (slope >= 0) return 0;
  return bend > 1e-18 * Math.abs(slope) ? -slope / bend : Number.POSITIVE_INFINITY;
}

/** Keeps the breaks in order. They are few. */
function insert(b: Breaks, count: number, place: number, sign: 1 | -1, slope: number, bend: number): void {
  let i = count;
  for (; i > 0 && at(b.at, i - 1) > place; i--) {
    b.at[i] = at(b.at, i - 1);
    b.slope[i] = at(b.slope, i - 1);
    b.bend[i] = at(b.bend, i - 1);
  }
  b.at[i] = place;
  b.slope[i] = sign * slope;
  b.bend[i] = sign * bend;
}

import { between, type Interval } from '../plan/interval.js';
import type { Pad, Strut } from '../plan/support.js';
import type { Point3 } from './frame.js';
import { band, type Extent } from './outline.js';
import { padUnder } from './pad-under.js';

/** A strut with all that follows from where its two ends are. Lengths m, angles rad. */
export interface PlacedStrut {
  readonly strut: Strut;
  readonly pad: Pad | undefined;
  /** Where its head meets the part, at the low end of that part's height. */
  readonly head: Point3;
  /** Where its foot stands: on the ground or on its pad. */
  readonly foot: Point3;
  /** From under the head to the foot, along the ground. */
  readonly run: number;
  /** From the foot up to the head. */
  readonly rise: Interval;
  readonly length: Interval;
  /** To the ground. */
  readonly angle: Interval;
  /** As a thin band from above. */
  readonly extent: Extent;
}

export function placeStrut(strut: Strut, pads: readonly Pad[]): PlacedStrut {
  const { head, foot } = strut;
  const pad = padUnder(strut.id, foot.pad, pads);
  const z = pad?.thickness ?? 0;
  const run = Math.hypot(foot.x - head.x, foot.y - head.y);
  const rise = between(head.z.low - z, head.z.high - z);
  return {
    strut,
    pad,
    head: { x: head.x, y: head.y, z: head.z.low },
    foot: { x: foot.x, y: foot.y, z },
    run,
    rise,
    length: between(Math.hypot(run, rise.low), Math.hypot(run, rise.high)),
    angle: between(Math.atan2(rise.low, run), Math.atan2(rise.high, run)),
    extent: { element: strut.id, outline: band(foot, head, strutWide), low: 0, high: head.z.high },
  };
}

const strutWide = 0.1;

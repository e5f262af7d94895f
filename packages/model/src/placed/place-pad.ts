import type { Plan } from '../plan/plan.js';
import type { Pad } from '../plan/support.js';
import type { PlanPoint } from './frame.js';
import { type Extent, rectangle } from './outline.js';

/** A pad with where it lies: under the middle of what it is under. */
export interface PlacedPad {
  readonly pad: Pad;
  /** Unknown where nothing in the plan stands on it. */
  readonly at: PlanPoint | undefined;
  readonly extent: Extent | undefined;
}

export function placePad(pad: Pad, { cribs, stepChocks, struts }: Plan): PlacedPad {
  const above = [...cribs, ...stepChocks].find(
    (c) => c.id === pad.under || (c.standsOn.kind === 'pad' && c.standsOn.pad === pad.id),
  );
  const at = above?.at ?? struts.find((s) => s.id === pad.under || s.foot.pad === pad.id)?.foot;
  return {
    pad,
    at,
    extent: at && {
      element: pad.id,
      outline: rectangle(at, pad.length, pad.width),
      low: 0,
      high: pad.thickness,
    },
  };
}

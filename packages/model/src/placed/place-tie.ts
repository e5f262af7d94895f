import type { ElementId } from '../plan/ref.js';
import type { Anchor, Tie } from '../plan/support.js';
import type { Vehicle } from '../plan/vehicle.js';
import type { Point3 } from './frame.js';
import type { PlacedStrut } from './place-strut.js';

/** A strap, chain or wire rope with where its ends are. Lengths m. */
export interface PlacedTie {
  readonly tie: Tie;
  /** Unknown where the strut or the vehicle at that end is not in the plan. */
  readonly from: Point3 | undefined;
  readonly to: Point3 | undefined;
  /** Straight from end to end. */
  readonly length: number | undefined;
}

interface Anchors {
  readonly vehicles: ReadonlyMap<ElementId, Vehicle>;
  readonly struts: ReadonlyMap<ElementId, PlacedStrut>;
}

export function placeTie(tie: Tie, anchors: Anchors): PlacedTie {
  const from = anchorPoint(tie.from, anchors);
  const to = anchorPoint(tie.to, anchors);
  const length = from && to && Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z);
  return { tie, from, to, length };
}

/** Where an end of a tie is, plan axes. `undefined` where its strut or vehicle is not in the plan. */
function anchorPoint(anchor: Anchor, { vehicles, struts }: Anchors): Point3 | undefined {
  switch (anchor.kind) {
    case 'ground anchor':
      return { x: anchor.x, y: anchor.y, z: 0 };
    case 'vehicle part':
      return vehicles.has(anchor.vehicle) ? { x: anchor.x, y: anchor.y, z: anchor.z } : undefined;
    case 'strut base':
      return struts.get(anchor.strut)?.foot;
    case 'strut head':
      return struts.get(anchor.strut)?.head;
  }
}

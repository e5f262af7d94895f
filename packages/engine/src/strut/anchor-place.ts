import type { Plan } from '../model/plan.js';
import type { Anchor } from '../model/support.js';

import { footHeight } from './foot-height.js';

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Where an end of a tie is, plan axes. `undefined` where its strut or vehicle is not in the plan. */
export function anchorPlace(anchor: Anchor, plan: Plan): Place | undefined {
  switch (anchor.kind) {
    case 'ground anchor':
      return { x: anchor.x, y: anchor.y, z: 0 };
    case 'vehicle part': {
      const known = plan.vehicles.some((v) => v.id === anchor.vehicle);
      return known ? { x: anchor.x, y: anchor.y, z: anchor.z } : undefined;
    }
    case 'strut base':
    case 'strut head': {
      const strut = plan.struts.find((s) => s.id === anchor.strut);
      if (strut === undefined) return undefined;
      const { head, foot } = strut;
      return anchor.kind === 'strut head'
        ? { x: head.x, y: head.y, z: head.z.low }
        : { x: foot.x, y: foot.y, z: footHeight(strut, plan.pads) };
    }
  }
}

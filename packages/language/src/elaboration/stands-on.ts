import type { StandsOn } from '@cribwright/engine';
import type { BoundBlock } from '../binding/bound-file.js';
import type { Yields } from '../phrase/shape.js';
import { problemMessage } from '../problems/problem-message.js';
import type { cribProperties } from '../schema/crib.js';
import type { Making } from './making.js';
import { notInPlan } from './not-in-plan.js';
import type { Said } from './writing.js';

type FootingValues = Yields<typeof cribProperties.standsOn>;

/** What a support stands on. */
export function standsOn(m: Making, block: BoundBlock, said: Said<FootingValues> | undefined): StandsOn {
  const { w, cast, within } = m;
  if (!said || said.values.ground) return { kind: 'ground' };
  if (said.values.pad) {
    const pad = w.idOf(said.values.pad, within);
    return pad ? { kind: 'pad', pad } : { kind: 'ground' };
  }
  const placed = cast.part(w, said.values.vehicle, said.values.part, within);
  if (!placed) {
    w.tell(notInPlan(said.line.span, problemMessage('not-in-plan--stands-on', {})), block.uri, within);
    return { kind: 'ground' };
  }
  return { kind: 'vehicle', vehicle: placed.vehicle.id, part: placed.part.id };
}

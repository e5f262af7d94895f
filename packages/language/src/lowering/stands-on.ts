import type { StandsOn } from '@cribwright/model';
import type { BoundBlock } from '../bound/bound-file.js';
import type { Yields } from '../bound/shape.js';
import { problemMessage } from '../problems/problem-message.js';
import type { cribProperties } from '../schema/crib.js';
import type { PropertyValue } from './lowering.js';
import type { LoweringContext } from './lowering-context.js';
import { notInPlan } from './not-in-plan.js';

type FootingValues = Yields<typeof cribProperties.standsOn>;

/** What a support stands on. */
export function standsOn(
  m: LoweringContext,
  block: BoundBlock,
  said: PropertyValue<FootingValues> | undefined,
): StandsOn {
  const { w, placedVehicles: cast, within } = m;
  if (!said || said.values.ground) return { kind: 'ground' };
  if (said.values.pad) {
    const pad = w.idOf(said.values.pad, within);
    return pad ? { kind: 'pad', pad } : { kind: 'ground' };
  }
  const placed = cast.part(w, said.values.vehicle, said.values.part, within);
  if (!placed) {
    w.report(notInPlan(said.line.span, problemMessage('not-in-plan--stands-on', {})), block.uri, within);
    return { kind: 'ground' };
  }
  return { kind: 'vehicle', vehicle: placed.vehicle.id, part: placed.part.id };
}

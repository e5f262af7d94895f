import type { PolicyKey } from '@cribwright/model';
import { limitValue } from '@cribwright/model/internal';
import type { SupportWorkings } from '../supports/support-workings.js';

const low = (w: SupportWorkings, key: PolicyKey): number => limitValue(w.plan.policy, key)?.low ?? 0;

/** Of a timber on the part of a vehicle. */
export const timberOnPart = (w: SupportWorkings): number => low(w, 'friction timber on metal');

/** Of a crib on what it stands on; never better than between its own courses. */
export const underCrib = (w: SupportWorkings, onVehicle: boolean): number =>
  Math.min(
    low(w, 'friction timber on timber'),
    onVehicle ? timberOnPart(w) : w.plan.ground.surface.frictionTimber.low,
  );

/** Of a strut's base plate: the least of the plate, a pad of timber under it, and the metal of a vehicle there. */
export const underFoot = (w: SupportWorkings): number => {
  const { surface } = w.plan.ground;
  return Math.min(
    low(w, 'friction strut base'),
    surface.frictionTimber.low,
    surface.frictionBody?.low ?? Number.POSITIVE_INFINITY,
  );
};

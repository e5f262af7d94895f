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

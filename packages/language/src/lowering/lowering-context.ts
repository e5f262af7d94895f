import type { Policy } from '@cribwright/model';
import type { Expansion } from './expansion.js';
import type { Lowering } from './lowering.js';
import type { PlacedVehicles } from './placed-vehicles.js';

/** Where a support is made: in the plan, or by one use of a pattern. */
export interface LoweringContext {
  readonly w: Lowering;
  readonly placedVehicles: PlacedVehicles;
  readonly policy: Policy;
  readonly within: Expansion;
}

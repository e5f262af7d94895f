import { exactly, type Interval } from '../plan/interval.js';
import type { ElementId } from '../plan/ref.js';
import type { Crib, Pad } from '../plan/support.js';
import type { Vehicle } from '../plan/vehicle.js';
import { padUnder } from './pad-under.js';
import { partNamed } from './part-place.js';
import { upperSide } from './underside.js';

/** What placing a support needs to know of the rest of its plan. */
export interface Around {
  /** As they lie. */
  readonly vehicles: ReadonlyMap<ElementId, Vehicle>;
  readonly pads: readonly Pad[];
  /** How far along its top timber a contact may be from the part it carries, m. */
  readonly reach: number;
}

/** What a support stands on. */
export interface Base {
  /** Over the ground, m. Unknown where the plan names something that is not there. */
  readonly height: Interval | undefined;
  readonly pad: Pad | undefined;
}

/** What a crib or step chock stands on; a pad that says it lies under it counts too. */
export function baseOf({ id, standsOn, at }: Pick<Crib, 'id' | 'standsOn' | 'at'>, around: Around): Base {
  if (standsOn.kind === 'vehicle') {
    const vehicle = around.vehicles.get(standsOn.vehicle);
    const part = vehicle && partNamed(vehicle, standsOn.part);
    return { height: vehicle && part && upperSide(vehicle, part, at), pad: undefined };
  }
  const pad = padUnder(id, standsOn.kind === 'pad' ? standsOn.pad : undefined, around.pads);
  const gone = standsOn.kind === 'pad' && pad === undefined;
  return { height: gone ? undefined : exactly(pad?.thickness ?? 0), pad };
}

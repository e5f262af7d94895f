import type { ElementId } from '../plan/ref.js';
import type { Chock } from '../plan/support.js';
import type { Axle, Vehicle } from '../plan/vehicle.js';

/** Wheel chocks with the axle whose wheels they hold. */
export interface PlacedChock {
  readonly chock: Chock;
  /** `undefined` where the plan has no such vehicle. */
  readonly vehicle: Vehicle | undefined;
  /** The axle named, or the last where none is. `undefined` where it is not there. */
  readonly axle: Axle | undefined;
}

export function placeChock(chock: Chock, vehicles: ReadonlyMap<ElementId, Vehicle>): PlacedChock {
  const vehicle = vehicles.get(chock.vehicle);
  const axle =
    chock.axle === undefined
      ? vehicle?.axles.at(-1)
      : vehicle?.axles.find((a) => a.id === chock.axle || a.name === chock.axle);
  return { chock, vehicle, axle };
}

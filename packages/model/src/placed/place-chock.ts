import type { Chock } from '../plan/support.js';
import type { Axle, Vehicle } from '../plan/vehicle.js';

/** The axle that wheel chocks hold: the one named, or the last where none is. `undefined` where it is not there. */
export const chockedAxle = (chock: Chock, vehicle: Vehicle): Axle | undefined =>
  chock.axle === undefined
    ? vehicle.axles.at(-1)
    : vehicle.axles.find((a) => a.id === chock.axle || a.name === chock.axle);

import type { Part } from '../plan/vehicle.js';

/** m. A part that carries a vehicle from higher than this sits on another vehicle, as a kingpin. Common practice, no source. */
export const coupledAbove = 0.75;

/** Whether a part that carries a vehicle is too high to stand on the ground. Landing gear is carried at its foot. */
export const isCoupling = ({ carries, height }: Part): boolean =>
  carries?.down === true && height.low > coupledAbove;

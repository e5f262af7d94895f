import type { Vehicle } from '../plan/vehicle.js';

/** A place seen from above, m. */
export interface PlanPoint {
  readonly x: number;
  readonly y: number;
}

/** A place in space, m; z up from the ground. */
export interface Point3 extends PlanPoint {
  readonly z: number;
}

const turn = ({ x, y }: PlanPoint, angle: number): PlanPoint => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { x: c * x - s * y, y: s * x + c * y };
};

type Placed = Pick<Vehicle, 'at' | 'heading'>;

/** From vehicle axes (x back from its own front) to plan axes. */
export const toPlan = (vehicle: Placed, point: PlanPoint): PlanPoint => {
  const turned = turn(point, vehicle.heading);
  return { x: turned.x + vehicle.at.x, y: turned.y + vehicle.at.y };
};

/** From plan axes to vehicle axes. */
export const toVehicle = (vehicle: Placed, point: PlanPoint): PlanPoint =>
  turn({ x: point.x - vehicle.at.x, y: point.y - vehicle.at.y }, -vehicle.heading);

/** A step in vehicle axes, as a step in plan axes. */
export const stepToPlan = (vehicle: Placed, step: PlanPoint): PlanPoint => turn(step, vehicle.heading);

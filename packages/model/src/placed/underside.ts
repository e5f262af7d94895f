import { hull, type Interval } from '../plan/interval.js';
import type { Ground } from '../plan/plan.js';
import type { Part, Vehicle } from '../plan/vehicle.js';
import { type PlanPoint, toPlan, toVehicle } from './frame.js';
import { tilted } from './pose.js';

/**
 * Height of a part's underside above the ground at a place (plan axes), of a vehicle as it lies (see `posed`), m.
 * A pitched vehicle is higher at one end than at the other.
 */
export function underside(vehicle: Vehicle, part: Part, at: PlanPoint): Interval {
  if (vehicle.position.kind !== 'pitched') return part.height;
  const { angle } = vehicle.position;
  const { x } = toVehicle(vehicle, at);
  return {
    low: tilted(vehicle, angle, { x, z: part.height.low }),
    high: tilted(vehicle, angle, { x, z: part.height.high }),
  };
}

/** Height of a part's upper side above the ground at a place (plan axes), of a vehicle as it lies, m. */
export const upperSide = (vehicle: Vehicle, part: Part, at: PlanPoint): Interval => {
  const raised = { low: part.height.low + part.depth, high: part.height.high + part.depth };
  return underside(vehicle, { ...part, height: raised }, at);
};

/** Height of a part's underside from its one end to its other, of a vehicle as it lies, m. */
export const undersideAlong = (vehicle: Vehicle, part: Part): Interval =>
  hull(
    underside(vehicle, part, toPlan(vehicle, { x: part.from, y: 0 })),
    underside(vehicle, part, toPlan(vehicle, { x: part.to, y: 0 })),
  );

/**
 * How steeply the underside of a vehicle lies to level, rad: its own pitch and what the ground adds. Lengthwise the two
 * may add up; across they make a right angle: cos = cos pitch × cos grade.
 */
export function undersideSlope(vehicle: Vehicle, { grade, toward }: Ground): number {
  const own = vehicle.position.kind === 'pitched' ? Math.abs(vehicle.position.angle) : 0;
  const fall = Math.atan(Math.abs(grade));
  const lengthwise = toward === 'front' || toward === 'rear';
  return lengthwise || own === 0 ? own + fall : Math.acos(Math.cos(own) * Math.cos(fall));
}

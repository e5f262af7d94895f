import type { Interval } from '../model/interval.js';
import type { Ground } from '../model/plan.js';
import type { Part, Vehicle } from '../model/vehicle.js';
import { type Point, toVehicle } from './frame.js';

/**
 * Height of a part's underside above the ground at a place (plan axes), of a vehicle as it lies (see `posed`).
 *
 * A pitched vehicle turns about its rearmost axle on the ground: z = h cos θ − (x axle − x) sin θ, nose down
 * positive.
 */
export function underside(vehicle: Vehicle, part: Part, at: Point): Interval {
  if (vehicle.position.kind !== 'pitched') return part.height;
  const { angle } = vehicle.position;
  const ahead = pivot(vehicle) - toVehicle(vehicle, at).x;
  const tilt = (h: number) => h * Math.cos(angle) - ahead * Math.sin(angle);
  return { low: tilt(part.height.low), high: tilt(part.height.high) };
}

/** The axle that stays on the ground: the rearmost, or the tail where there is none. */
const pivot = (vehicle: Vehicle): number =>
  vehicle.axles.length > 0 ? Math.max(...vehicle.axles.map((a) => a.x)) : vehicle.length;

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

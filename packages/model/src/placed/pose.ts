import type { Vehicle } from '../plan/vehicle.js';
import { type Point3, toPlan } from './frame.js';

/**
 * Takes a place in a vehicle's own axes, as it stands upright, to plan axes: first its position, then its heading, then
 * where it stands.
 *
 * A pitched vehicle turns about the ground under its rearmost axle. Distances along it stay what a tape along the
 * vehicle reads, as `underside` has them: only heights change. One on its side or roof lies on the ground along its
 * own center line.
 */
export function poseOf(vehicle: Vehicle): (p: Point3) => Point3 {
  const tilt = positionOf(vehicle);
  return (p) => {
    const q = tilt(p);
    return { ...toPlan(vehicle, q), z: q.z };
  };
}

function positionOf(vehicle: Vehicle): (p: Point3) => Point3 {
  const { position } = vehicle;
  switch (position.kind) {
    case 'upright':
      return (p) => p;
    case 'pitched':
      return (p) => ({ ...p, z: tilted(vehicle, position.angle, p) });
    case 'on its side': {
      const side = position.side === 'passenger' ? 1 : -1;
      return (p) => ({
        x: p.x,
        y: side * (p.z - vehicle.height / 2),
        z: vehicle.width / 2 - side * p.y,
      });
    }
    case 'on its roof':
      return (p) => ({ x: p.x, y: -p.y, z: vehicle.height - p.z });
  }
}

/**
 * Height over the ground of a place on a vehicle that is pitched nose down by an angle (rad), m: z cos θ − (x axle − x)
 * sin θ, with x in vehicle axes.
 */
export const tilted = (
  vehicle: Vehicle,
  angle: number,
  at: { readonly x: number; readonly z: number },
): number => at.z * Math.cos(angle) - (pivotOf(vehicle) - at.x) * Math.sin(angle);

/** The axle that stays on the ground: the rearmost, or the tail where there is none. Vehicle axes, m. */
const pivotOf = (vehicle: Vehicle): number =>
  vehicle.axles.length > 0 ? Math.max(...vehicle.axles.map((a) => a.x)) : vehicle.length;

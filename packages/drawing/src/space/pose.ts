import type { Vehicle } from '@cribwright/engine';
import type { Point3 } from './vector.js';

/**
 * Takes a place in a vehicle's own axes to plan axes: first its position, then its heading, then where it stands.
 * A pitched vehicle turns about the ground point under its rearmost axle; one on its side or roof lies on
 * the ground along its own centerline.
 */
export function poseOf(vehicle: Vehicle): (p: Point3) => Point3 {
  const tilt = positionOf(vehicle);
  const [cos, sin] = [Math.cos(vehicle.heading), Math.sin(vehicle.heading)];
  return (p) => {
    const q = tilt(p);
    return {
      x: vehicle.at.x + q.x * cos - q.y * sin,
      y: vehicle.at.y + q.x * sin + q.y * cos,
      z: q.z,
    };
  };
}

function positionOf(vehicle: Vehicle): (p: Point3) => Point3 {
  const { position } = vehicle;
  switch (position.kind) {
    case 'upright':
      return (p) => p;
    case 'pitched': {
      const about = Math.max(...vehicle.axles.map((a) => a.x), -Infinity);
      const pivot = Number.isFinite(about) ? about : vehicle.length;
      const [cos, sin] = [Math.cos(position.angle), Math.sin(position.angle)];
      return (p) => ({
        x: pivot + (p.x - pivot) * cos - p.z * sin,
        y: p.y,
        z: (p.x - pivot) * sin + p.z * cos,
      });
    }
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

import type { Interval } from '../model/interval.js';
import type { Part, Vehicle } from '../model/vehicle.js';
import type { Point } from './frame.js';

/**
 * Height of a part's underside above the ground at a place (plan axes).
 * `undefined` where the vehicle's posture does not let it be told.
 */
export function underside(vehicle: Vehicle, part: Part, _at: Point): Interval | undefined {
  return vehicle.posture.kind === 'upright' ? part.height : undefined;
}

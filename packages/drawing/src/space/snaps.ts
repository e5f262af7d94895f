import { crossmemberPlaces, type Plan, poseOf } from '@cribwright/model';
import type { Drag } from '../scene/scene.js';
import { at3 } from '../scene/vector.js';

/**
 * Places that attract a drag: joists lengthwise, rails crosswise, of every vehicle that runs along the plan's axes,
 * but of the one that is dragged itself.
 */
export function snapsFor(plan: Plan, dragged: string | undefined): Drag['snaps'] {
  const x: number[] = [];
  const y: number[] = [];
  for (const vehicle of plan.vehicles) {
    if (vehicle.id === dragged || Math.abs(Math.sin(vehicle.heading)) > 1e-6) continue;
    const pose = poseOf(vehicle);
    for (const part of vehicle.parts) {
      const z = part.height.low;
      if (part.form === 'joists') {
        x.push(...crossmemberPlaces(part).map((place) => pose(at3(place, 0, z)).x));
      } else if (part.form === 'rails') {
        y.push(...part.offsets.map((offset) => pose(at3(0, offset, z)).y));
      }
    }
  }
  return { x: tidy(x), y: tidy(y) };
}

const tidy = (values: readonly number[]): readonly number[] =>
  [...new Set(values.map((v) => Math.round(v * 1e6) / 1e6))].sort((a, b) => a - b);

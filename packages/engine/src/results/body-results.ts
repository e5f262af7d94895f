import type { BodyResult } from '../analysis/analysis.js';
import type { Workings } from '../derived/workings.js';

/** Weight and center of every vehicle, cargo included. */
export const bodyResults = (w: Workings): readonly BodyResult[] =>
  w.plan.vehicles.flatMap((vehicle) => {
    const mass = w.masses().get(vehicle.id);
    return mass === undefined
      ? []
      : [
          {
            vehicle: vehicle.id,
            name: vehicle.name,
            weight: mass.weight,
            center: { x: mass.x, y: mass.y, z: mass.z },
          },
        ];
  });

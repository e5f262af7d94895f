import type { CribWorking } from '../crib/crib-working.js';
import type { ElementId } from '../model/ref.js';
import type { StepChock } from '../model/support.js';
import type { Axle, Vehicle } from '../model/vehicle.js';
import { toPlan } from '../vehicle/frame.js';
import { type Outline, overlap, rectangle } from './polygon.js';

/** A thing as the room it takes: an outline from above between two heights. */
export interface Solid {
  readonly element: ElementId;
  readonly outline: Outline;
  readonly low: number;
  readonly high: number;
}

const inch = 0.0254;

/** How deep two solids run into each other seen from above; zero where one is clear of the other, or above it. */
export const clash = (a: Solid, b: Solid): number =>
  Math.min(a.high, b.high) - Math.max(a.low, b.low) > inch / 4 ? overlap(a.outline, b.outline) : 0;

/** A crib takes the full length of its timbers both ways. */
export const cribSolid = ({ crib, base, height }: CribWorking): Solid => ({
  element: crib.id,
  outline: rectangle(crib.at, crib.timber.length, crib.timber.length),
  low: base.value?.low ?? 0,
  high: (base.value?.high ?? 0) + (height.value?.high ?? 0),
});

/** The body of a vehicle from the lowest of its long parts up; cribs stand in the room below that. */
export function vehicleSolid(vehicle: Vehicle): Solid {
  const parts = vehicle.parts.filter((p) => p.form !== 'points').map((p) => p.height.low);
  return {
    element: vehicle.id,
    outline: rectangle(
      toPlan(vehicle, { x: vehicle.length / 2, y: 0 }),
      vehicle.length,
      vehicle.width,
      vehicle.heading,
    ),
    low: parts.length > 0 ? Math.min(...parts) : 8 * inch,
    high: vehicle.height,
  };
}

/** Tires of a car are about 25 in, of a truck about 40 in high; as wide as 8 and 10 in. From memory. */
const tireSize = (axle: Axle) =>
  axle.tiresEachSide === 2 || axle.track > 74 * inch
    ? { high: 40 * inch, wide: 10 * inch * axle.tiresEachSide }
    : { high: 25 * inch, wide: 8 * inch };

/** The wheels of an upright vehicle. Their outline is taken small: what it finds really is in the way. */
export const wheelSolids = (vehicle: Vehicle): readonly Solid[] =>
  vehicle.position.kind !== 'upright'
    ? []
    : vehicle.axles.flatMap((axle) => {
        const { high, wide } = tireSize(axle);
        return (['driver', 'passenger'] as const)
          .filter((side) => !axle.missing.includes(side))
          .map((side) => ({
            element: vehicle.id,
            outline: rectangle(
              toPlan(vehicle, { x: axle.x, y: ((side === 'driver' ? -1 : 1) * axle.track) / 2 }),
              0.7 * high,
              wide,
              vehicle.heading,
            ),
            low: 0,
            high,
          }));
      });

export const stepChockSolid = (s: StepChock): Solid => ({
  element: s.id,
  outline: rectangle(s.at, 24 * inch, 6 * inch),
  low: 0,
  high: Math.max(0, ...s.heights),
});

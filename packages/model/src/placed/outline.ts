import type { ElementId } from '../plan/ref.js';
import type { PlanPoint } from './frame.js';

/** A convex outline seen from above, plan axes, m. */
export type Outline = readonly PlanPoint[];

/** The room that one element takes: an outline from above between two heights over the ground, m. */
export interface Extent {
  readonly element: ElementId;
  readonly outline: Outline;
  readonly low: number;
  readonly high: number;
}

/** A rectangle about a middle, its length along x turned by an angle (rad). */
export function rectangle(middle: PlanPoint, length: number, width: number, angle = 0): Outline {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([a = 0, b = 0]) => ({
    x: middle.x + (a * length * c) / 2 - (b * width * s) / 2,
    y: middle.y + (a * length * s) / 2 + (b * width * c) / 2,
  }));
}

/**
 * A band about a straight line. Plan axes, m.
 *
 * @param width m, half to each side
 */
export const band = (from: PlanPoint, to: PlanPoint, width: number): Outline =>
  rectangle(
    { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
    Math.hypot(to.x - from.x, to.y - from.y),
    width,
    Math.atan2(to.y - from.y, to.x - from.x),
  );

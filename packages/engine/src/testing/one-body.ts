import type { Rest, RestingSystem, Spring } from '../resting/system.js';

/** A spring under the truck, on the ground. */
export const spring = (
  id: string,
  x: number,
  y: number,
  stiffness = 1e6,
  change: Partial<Spring> = {},
): Spring => ({
  id,
  upper: 'truck',
  lower: 'ground',
  x,
  y,
  stiffness,
  ...change,
});
/** A truck on springs of its own. */
export const truck = (weight: number, x: number, y: number, springs: readonly Spring[]): RestingSystem => ({
  bodies: [{ id: 'truck', weight, x, y }],
  springs,
});
/** The answer, where it rests. */
export const resting = (r: Rest) => {
  if (r.kind !== 'rests') throw new Error(`it ${r.kind}`);
  return r;
};

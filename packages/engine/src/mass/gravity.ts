import type { Ground } from '@cribwright/model';
import type { Vector } from '../space/vectors.js';

const falls = {
  front: { x: -1, y: 0 },
  rear: { x: 1, y: 0 },
  'driver side': { x: 0, y: -1 },
  'passenger side': { x: 0, y: 1 },
} as const;

/** Which way the ground falls, plan axes. */
export const downGrade = ({ toward }: Ground): { readonly x: number; readonly y: number } => falls[toward];

/** The pull on each newton of weight, seen from the ground: W cos θ into it, W sin θ down the grade. */
export function gravityOn(ground: Ground): Vector {
  const angle = Math.atan(Math.abs(ground.grade));
  const way = downGrade(ground);
  return { x: way.x * Math.sin(angle), y: way.y * Math.sin(angle), z: -Math.cos(angle) };
}

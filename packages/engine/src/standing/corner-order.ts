import { type JointCorner, jointCorners } from '../loss/components.js';
import type { Group } from './standing-scene.js';

/** The corners of the ranges without tool loads, which a scene puts on by itself: lightest, heaviest, then the others. */
export function cornersInOrder({ bodies }: Group): readonly JointCorner[] {
  const corners = jointCorners(bodies).filter((corner) =>
    bodies.every((b, i) => b.corners[corner[i] ?? 0]?.working !== true),
  );
  const weightOf = (corner: JointCorner) =>
    bodies.reduce((sum, b, i) => sum + (b.corners[corner[i] ?? 0]?.weight ?? 0), 0);
  const sorted = corners.map((corner, at) => ({ corner, at, weight: weightOf(corner) }));
  sorted.sort((a, b) => a.weight - b.weight || a.at - b.at);
  const lightest = sorted[0]?.corner;
  const heaviest = sorted.at(-1)?.corner;
  return [...new Set([lightest, heaviest, ...corners].filter((c) => c !== undefined))];
}

import { type JointCorner, jointCorners } from '../loss/components.js';
import type { Group } from './standing-scene.js';

/**
 * The corners of the ranges at which a scene is worked out, without tool loads, which it puts on by itself: all
 * lightest, all heaviest, and each corner of each vehicle with the others at their heaviest. Other mixes are left to the
 * vertical model and the linear program, which try them all.
 */
export function governingCorners({ bodies }: Pick<Group, 'bodies'>): readonly JointCorner[] {
  const corners = jointCorners(bodies).filter((corner) =>
    bodies.every((b, i) => b.corners[corner[i] ?? 0]?.working !== true),
  );
  const weightOf = (corner: JointCorner) =>
    bodies.reduce((sum, b, i) => sum + (b.corners[corner[i] ?? 0]?.weight ?? 0), 0);
  const sorted = corners.map((corner, at) => ({ corner, at, weight: weightOf(corner) }));
  sorted.sort((a, b) => a.weight - b.weight || a.at - b.at);
  const [lightest, heaviest] = [sorted[0]?.corner, sorted.at(-1)?.corner];
  if (lightest === undefined || heaviest === undefined) return [];
  const isOther = (corner: JointCorner, vehicle: string) =>
    bodies.every((b, i) => b.vehicle === vehicle || corner[i] === heaviest[i]);
  const vehicles = [...new Set(bodies.map((b) => b.vehicle))];
  const own = vehicles.flatMap((v) => corners.filter((corner) => isOther(corner, v)));
  return [...new Set([lightest, heaviest, ...own])];
}

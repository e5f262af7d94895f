import type { Point } from '../placed/frame.js';

/** A convex outline seen from above. */
export type Outline = readonly Point[];

/** A rectangle about a middle, its length along x turned by an angle. */
export function rectangle(middle: Point, length: number, width: number, angle = 0): Outline {
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

/** A band of some width about a straight line. */
export const band = (from: Point, to: Point, width: number): Outline =>
  rectangle(
    { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
    Math.hypot(to.x - from.x, to.y - from.y),
    width,
    Math.atan2(to.y - from.y, to.x - from.x),
  );

/** Overlaps less than this are a touch, m. */
const touch = 0.005;

/**
 * How deep two convex outlines run into each other, m; zero where they only touch or lie apart. By separating axes:
 * if any edge's normal parts them, they do not overlap.
 */
export function overlap(a: Outline, b: Outline): number {
  const least = Math.min(leastAcross(a, a, b), leastAcross(b, a, b));
  return Number.isFinite(least) ? Math.max(0, least) : 0;
}

/** The least depth across the edges of one outline; below zero where an edge parts the two. */
function leastAcross(edges: Outline, a: Outline, b: Outline): number {
  let least = Number.POSITIVE_INFINITY;
  let last = edges.at(-1);
  for (const p of edges) {
    const from = last;
    last = p;
    if (from === undefined) continue;
    const size = Math.hypot(p.x - from.x, p.y - from.y);
    if (!(size > 0)) continue;
    const x = (p.y - from.y) / size;
    const y = (from.x - p.x) / size;
    const depth =
      Math.min(farthest(a, x, y), farthest(b, x, y)) + Math.min(farthest(a, -x, -y), farthest(b, -x, -y));
    if (depth <= touch) return -1;
    least = Math.min(least, depth);
  }
  return least;
}

/** How far an outline reaches along a direction. */
export function farthest(outline: Outline, x: number, y: number): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const p of outline) most = Math.max(most, p.x * x + p.y * y);
  return most;
}

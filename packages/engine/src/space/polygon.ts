import type { Point } from '../vehicle/frame.js';

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
  let least = Number.POSITIVE_INFINITY;
  for (const normal of [...normals(a), ...normals(b)]) {
    const [aLow, aHigh] = spanAlong(a, normal);
    const [bLow, bHigh] = spanAlong(b, normal);
    const depth = Math.min(aHigh, bHigh) - Math.max(aLow, bLow);
    if (depth <= touch) return 0;
    least = Math.min(least, depth);
  }
  return Number.isFinite(least) ? least : 0;
}

const normals = (outline: Outline): readonly Point[] =>
  outline.flatMap((p, i) => {
    const q = outline[(i + 1) % outline.length];
    if (q === undefined) return [];
    const size = Math.hypot(q.x - p.x, q.y - p.y);
    return size > 0 ? [{ x: (q.y - p.y) / size, y: (p.x - q.x) / size }] : [];
  });

function spanAlong(outline: Outline, normal: Point): readonly [number, number] {
  const along = outline.map((p) => p.x * normal.x + p.y * normal.y);
  return [Math.min(...along), Math.max(...along)];
}

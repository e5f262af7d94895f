import type { Outline } from '@cribwright/model';

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

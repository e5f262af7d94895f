import type { Extent, Point3 } from '@cribwright/model';

/**
 * Length of a straight line that runs inside a solid, m. The line is cut down by each edge of the outline and by
 * the two heights (Cyrus and Beck's clipping).
 */
export function lengthInside(from: Point3, to: Point3, solid: Extent): number {
  let start = 0;
  let end = 1;
  const cut = (at: number, change: number) => {
    // Inside where at + t × change <= 0.
    if (Math.abs(change) < 1e-12) {
      if (at > 0) end = -1;
      return;
    }
    const t = -at / change;
    if (change > 0) end = Math.min(end, t);
    else start = Math.max(start, t);
  };
  solid.outline.forEach((p, i) => {
    const q = solid.outline[(i + 1) % solid.outline.length];
    if (q === undefined) return;
    const normal = { x: q.y - p.y, y: p.x - q.x };
    cut(
      (from.x - p.x) * normal.x + (from.y - p.y) * normal.y,
      (to.x - from.x) * normal.x + (to.y - from.y) * normal.y,
    );
  });
  cut(solid.low - from.z, from.z - to.z);
  cut(from.z - solid.high, to.z - from.z);
  return end > start ? (end - start) * Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z) : 0;
}

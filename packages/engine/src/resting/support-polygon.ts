/** A place in plan. */
export interface PolygonPoint {
  readonly x: number;
  readonly y: number;
}

const cross = (o: PolygonPoint, a: PolygonPoint, b: PolygonPoint): number =>
  (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);

/**
 * The line drawn tight round a set of points: corners in order, driver side to passenger side turning from front
 * to rear. One corner for a single place, two for a line.
 */
export function supportPolygon(points: readonly PolygonPoint[]): readonly PolygonPoint[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const unique = sorted.filter((p, i) => i === 0 || p.x !== sorted[i - 1]?.x || p.y !== sorted[i - 1]?.y);
  if (unique.length < 3) return unique;
  const lower = chain(unique);
  const upper = chain(unique.toReversed());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function chain(points: readonly PolygonPoint[]): PolygonPoint[] {
  const kept: PolygonPoint[] = [];
  for (const p of points) {
    while (kept.length > 1) {
      const [a, b] = [kept.at(-2), kept.at(-1)];
      if (a === undefined || b === undefined || cross(a, b, p) > 0) break;
      kept.pop();
    }
    kept.push(p);
  }
  return kept;
}

/**
 * How far inside the polygon a point lies: the distance to the nearest edge, m; negative outside. Zero or less
 * for a polygon without area.
 */
export function insideBy(polygon: readonly PolygonPoint[], p: PolygonPoint): number {
  if (polygon.length < 3) return -distanceTo(polygon, p);
  let least = Number.POSITIVE_INFINITY;
  for (const [i, a] of polygon.entries()) {
    const b = polygon[(i + 1) % polygon.length] ?? a;
    least = Math.min(least, cross(a, b, p) / Math.hypot(b.x - a.x, b.y - a.y));
  }
  return least >= 0 ? least : -distanceTo(polygon, p);
}

/** The edge a body would tip over: the nearest one to its center of gravity. */
export function nearestEdge(polygon: readonly PolygonPoint[], p: PolygonPoint) {
  const edges = polygon.map((a, i) => ({ a, b: polygon[(i + 1) % polygon.length] ?? a }));
  return edges.reduce<{ a: PolygonPoint; b: PolygonPoint; distance: number } | undefined>((best, e) => {
    const distance = toSegment(e.a, e.b, p);
    return best === undefined || distance < best.distance ? { ...e, distance } : best;
  }, undefined);
}

/** Distance from a point to the nearest place of a polygon's outline, m. Endless where nothing stands. */
function distanceTo(polygon: readonly PolygonPoint[], p: PolygonPoint): number {
  return nearestEdge(polygon, p)?.distance ?? Number.POSITIVE_INFINITY;
}

function toSegment(a: PolygonPoint, b: PolygonPoint, p: PolygonPoint): number {
  const length = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
  const t = length === 0 ? 0 : ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length;
  const s = Math.min(1, Math.max(0, t));
  return Math.hypot(p.x - a.x - s * (b.x - a.x), p.y - a.y - s * (b.y - a.y));
}

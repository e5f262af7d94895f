import { type Point, supportPolygon } from '../resting/support-polygon.js';

/** How small and how large the share of the weight on one contact can be, whatever the stiffnesses. */
export interface ShareBounds {
  readonly least: number;
  readonly most: number;
  /**
   * The line that governs `most`: moments about it give the share, distance of the centre from it ÷ distance of
   * the contact from it. `undefined` where the whole weight can come on the contact.
   */
  readonly line: { readonly through: Point; readonly centre: number; readonly contact: number } | undefined;
}

/**
 * Bounds by statics alone on the share of a body's weight that contact `index` may carry, the centre of gravity
 * anywhere in the hull of `centres`: all distributions that only push and that balance the weight.
 *
 * With s on the contact and 1 − s on the others, the centre is s · contact + (1 − s) · (a place among the others).
 * So s is possible exactly when the others' polygon, shrunk toward the contact by s, meets the hull of centres;
 * two convex polygons meet unless the normal of one of their edges separates them, and each such normal is one
 * linear inequality in s. Exact, also when all contacts stand on one line.
 *
 * @returns `undefined` when no distribution balances: the body cannot rest.
 */
export function shareBounds(
  contacts: readonly Point[],
  index: number,
  centres: readonly Point[],
): ShareBounds | undefined {
  const contact = contacts[index];
  if (contact === undefined || centres.length === 0) return undefined;
  const others = supportPolygon(contacts.filter((_, i) => i !== index));
  const hull = supportPolygon(centres);
  if (others.length === 0) return onIt(contact, hull);
  let least = 0;
  let most = 1;
  let line: ShareBounds['line'];
  for (const n of [...normals(others), ...normals(hull), ...axes]) {
    // s · (n·contact) + (1 − s) · farthest ≥ nearest, along n.
    const own = along(n, contact);
    const farthest = Math.max(...others.map((p) => along(n, p)));
    const nearest = Math.min(...hull.map((p) => along(n, p)));
    const gain = own - farthest;
    const need = nearest - farthest;
    const slack = 1e-12 * (Math.abs(own) + Math.abs(farthest) + Math.abs(nearest) + 1e-12);
    if (Math.abs(gain) <= slack) {
      if (need > slack) return undefined;
    } else if (gain > 0) least = Math.max(least, need / gain);
    else if (need / gain < most) {
      most = need / gain;
      const through = others.reduce((best, p) => (along(n, p) > along(n, best) ? p : best));
      line = { through, centre: -need, contact: -gain };
    }
  }
  return least > most + 1e-9 || most < -1e-9
    ? undefined
    : { least: Math.min(1, least), most: Math.max(0, most), line };
}

const axes: readonly Point[] = [
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: 1 },
  { x: 0, y: -1 },
];

const along = (n: Point, p: Point): number => n.x * p.x + n.y * p.y;

/** Both normals of each edge, length 1. */
function normals(polygon: readonly Point[]): readonly Point[] {
  if (polygon.length < 2) return [];
  return polygon.flatMap((a, i) => {
    const b = polygon[(i + 1) % polygon.length] ?? a;
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const n = { x: (b.y - a.y) / length, y: (a.x - b.x) / length };
    return [n, { x: -n.x, y: -n.y }];
  });
}

/** A body on a single contact: the whole weight, if the centre can stand over it. */
function onIt(contact: Point, hull: readonly Point[]): ShareBounds | undefined {
  const apart = [...normals(hull), ...axes].some(
    (n) => Math.min(...hull.map((p) => along(n, p))) > along(n, contact) + 1e-9,
  );
  return apart ? undefined : { least: 1, most: 1, line: undefined };
}

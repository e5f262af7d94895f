import { type PolygonPoint, supportPolygon } from '../resting/support-polygon.js';

/** How small and how large the share of the weight on one contact can be, whatever the stiffnesses. */
export interface ShareBounds {
  readonly least: number;
  readonly most: number;
  /**
   * The line that governs `most`: moments about it give the share, distance of the center from it ÷ distance of
   * the contact from it. `undefined` where the whole weight can come on the contact.
   */
  readonly line:
    | { readonly through: PolygonPoint; readonly center: number; readonly contact: number }
    | undefined;
}

/**
 * Bounds by statics alone on the share of a body's weight that contact `index` may carry, the center of gravity
 * anywhere in the hull of `centers`: all distributions that only push and that balance the weight.
 *
 * @returns `undefined` when no distribution balances: the body cannot rest.
 */
export const shareBounds = (
  contacts: readonly PolygonPoint[],
  index: number,
  centers: readonly PolygonPoint[],
): ShareBounds | undefined => shareBoundsOf(contacts, centers)(index);

/**
 * The same for one contact after another. The others' polygon is that of all, except at a corner of it.
 *
 * With s on the contact and 1 − s on the others, the center is s · contact + (1 − s) · (a place among the others).
 * So s is possible exactly when the others' polygon, shrunk toward the contact by s, meets the hull of centers;
 * two convex polygons meet unless the normal of one of their edges separates them, and each such normal is one
 * linear inequality in s. Exact, also when all contacts stand on one line.
 */
export function shareBoundsOf(
  contacts: readonly PolygonPoint[],
  centers: readonly PolygonPoint[],
): (index: number) => ShareBounds | undefined {
  const hull = supportPolygon(centers);
  const all = supportPolygon(contacts);
  const shared = separators(all, hull);
  return (index) => {
    const contact = contacts[index];
    if (contact === undefined || hull.length === 0) return undefined;
    if (!all.some((p) => p.x === contact.x && p.y === contact.y)) return boundsFrom(contact, shared);
    const others = supportPolygon(contacts.filter((_, i) => i !== index));
    return others.length === 0 ? onIt(contact, hull) : boundsFrom(contact, separators(others, hull));
  };
}

/** A direction, how far the others reach along it and where, and where the centers begin. */
interface Separator {
  readonly n: PolygonPoint;
  readonly farthest: number;
  readonly through: PolygonPoint;
  readonly nearest: number;
}

const separators = (others: readonly PolygonPoint[], hull: readonly PolygonPoint[]): readonly Separator[] =>
  [...normals(others), ...normals(hull), ...axes].flatMap((n) => {
    const [first, ...rest] = others;
    if (first === undefined) return [];
    const through = rest.reduce((best, p) => (along(n, p) > along(n, best) ? p : best), first);
    return [{ n, through, farthest: along(n, through), nearest: Math.min(...hull.map((p) => along(n, p))) }];
  });

function boundsFrom(contact: PolygonPoint, directions: readonly Separator[]): ShareBounds | undefined {
  let least = 0;
  let most = 1;
  let line: ShareBounds['line'];
  for (const { n, farthest, through, nearest } of directions) {
    // s · (n·contact) + (1 − s) · farthest ≥ nearest, along n.
    const own = along(n, contact);
    const gain = own - farthest;
    const need = nearest - farthest;
    const slack = 1e-12 * (Math.abs(own) + Math.abs(farthest) + Math.abs(nearest) + 1e-12);
    if (Math.abs(gain) <= slack) {
      if (need > slack) return undefined;
    } else if (gain > 0) least = Math.max(least, need / gain);
    else if (need / gain < most) {
      most = need / gain;
      line = { through, center: -need, contact: -gain };
    }
  }
  return least > most + 1e-9 || most < -1e-9
    ? undefined
    : { least: Math.min(1, least), most: Math.max(0, most), line };
}

const axes: readonly PolygonPoint[] = [
  { x: 1, y: 0 },
  { x: -1, y: 0 },
  { x: 0, y: 1 },
  { x: 0, y: -1 },
];

const along = (n: PolygonPoint, p: PolygonPoint): number => n.x * p.x + n.y * p.y;

/** Both normals of each edge, length 1. */
function normals(polygon: readonly PolygonPoint[]): readonly PolygonPoint[] {
  if (polygon.length < 2) return [];
  return polygon.flatMap((a, i) => {
    const b = polygon[(i + 1) % polygon.length] ?? a;
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const n = { x: (b.y - a.y) / length, y: (a.x - b.x) / length };
    return [n, { x: -n.x, y: -n.y }];
  });
}

/** A body on a single contact: the whole weight, if the center can stand over it. */
function onIt(contact: PolygonPoint, hull: readonly PolygonPoint[]): ShareBounds | undefined {
  const apart = [...normals(hull), ...axes].some(
    (n) => Math.min(...hull.map((p) => along(n, p))) > along(n, contact) + 1e-9,
  );
  return apart ? undefined : { least: 1, most: 1, line: undefined };
}

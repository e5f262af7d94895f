import { around, type Box } from '../scene/bounds.js';
import { at } from '../scene/draw.js';
import type { SheetPoint } from '../scene/scene.js';
import type { Solid } from '../scene/solid.js';
import type { Point3 } from '../scene/vector.js';

/** One way of looking: where a place falls, in m right and m down, and how near it is to the eye. */
export interface Looking {
  readonly flat: (p: Point3) => SheetPoint;
  readonly near: (p: Point3) => number;
}

/** From above; the front to the left, the passenger side up the sheet. */
export const fromAbove: Looking = { flat: (p) => at(p.x, -p.y), near: (p) => p.z };
/** From the driver side; the front to the left. */
export const fromDriverSide: Looking = { flat: (p) => at(p.x, -p.z), near: (p) => -p.y };
/** From behind; the driver side to the left. */
export const fromBehind: Looking = { flat: (p) => at(p.y, -p.z), near: (p) => p.x };

const cos30 = Math.sqrt(3) / 2;
/** Isometric, from behind, above and the driver side. All three axes keep the same scale. */
export const fromCorner: Looking = {
  flat: (p) => at((p.x + p.y) * cos30, (p.x - p.y) / 2 - p.z),
  near: (p) => p.x - p.y + p.z,
};

/** The corner points of a solid; round ones are taken as many-sided. */
export function pointsOf(solid: Solid): readonly Point3[] {
  if (solid.kind === 'block') return solid.corners;
  if (solid.kind === 'rod') return [solid.from, solid.to];
  const known = round.get(solid);
  if (known !== undefined) return known;
  const points = [...ring(solid.from, solid), ...ring(solid.to, solid)];
  round.set(solid, points);
  return points;
}

/** The points of cylinders that were worked out before: each is asked for several times in one drawing. */
const round = new WeakMap<Solid, readonly Point3[]>();

/** The room that solids and places besides take, seen one way, m; a rod with its thickness or as a bare line. */
export function reachOf(
  solids: readonly Solid[],
  { flat }: Looking,
  besides: readonly Point3[] = [],
  rods: 'thick' | 'bare' = 'thick',
): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  const take = (p: Point3, half: number) => {
    const { x, y } = flat(p);
    if (x - half < left) left = x - half;
    if (x + half > right) right = x + half;
    if (y - half < top) top = y - half;
    if (y + half > bottom) bottom = y + half;
  };
  for (const solid of solids) {
    const half = solid.kind === 'rod' && rods === 'thick' ? solid.thickness / 2 : 0;
    for (const p of pointsOf(solid)) take(p, half);
  }
  for (const p of besides) take(p, 0);
  return { left, top, right, bottom };
}

type Cylinder = Extract<Solid, { kind: 'cylinder' }>;
const sides = 24;

/** A circle about `center`, square to the cylinder's axis. */
export function ring(center: Point3, { from, to, radius }: Cylinder): readonly Point3[] {
  const [ax, ay, az] = [to.x - from.x, to.y - from.y, to.z - from.z];
  const long = Math.hypot(ax, ay, az) || 1;
  const n = { x: ax / long, y: ay / long, z: az / long };
  const helper = Math.abs(n.z) < 0.9 ? { x: 0, y: 0, z: 1 } : { x: 1, y: 0, z: 0 };
  const u = unit(cross(n, helper));
  const v = cross(n, u);
  return Array.from({ length: sides }, (_, i) => {
    const angle = (2 * Math.PI * i) / sides;
    const [c, s] = [Math.cos(angle) * radius, Math.sin(angle) * radius];
    return {
      x: center.x + u.x * c + v.x * s,
      y: center.y + u.y * c + v.y * s,
      z: center.z + u.z * c + v.z * s,
    };
  });
}

const cross = (a: Point3, b: Point3): Point3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
});

const unit = (p: Point3): Point3 => {
  const long = Math.hypot(p.x, p.y, p.z) || 1;
  return { x: p.x / long, y: p.y / long, z: p.z / long };
};

/** The outline of points that bulge nowhere inward: their convex hull, going round once. */
export function outline(points: readonly SheetPoint[]): readonly SheetPoint[] {
  return upright(points) ?? hull(points);
}

/** The corners of points that lie on the corners of one upright rectangle, as nearly every timber does. */
function upright(points: readonly SheetPoint[]): readonly SheetPoint[] | undefined {
  const { left, right, top, bottom } = around(points);
  if (!(right - left > clearlyApart && bottom - top > clearlyApart)) return undefined;
  let corners = 0;
  for (const { x, y } of points) {
    if ((x !== left && x !== right) || (y !== top && y !== bottom)) return undefined;
    corners |= 1 << ((x === left ? 0 : 1) + (y === top ? 0 : 2));
  }
  if (corners !== 0b1111) return undefined;
  return [at(left, top), at(right, top), at(right, bottom), at(left, bottom)];
}

/** Closer together than this, points are left to the hull, which may take them for one, mm. */
const clearlyApart = 1e-3;

function hull(points: readonly SheetPoint[]): readonly SheetPoint[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (list: readonly SheetPoint[]) => {
    const kept: SheetPoint[] = [];
    for (const p of list) {
      for (;;) {
        const [a, b] = [kept.at(-2), kept.at(-1)];
        if (a === undefined || b === undefined) break;
        if ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > 1e-9) break;
        kept.pop();
      }
      kept.push(p);
    }
    kept.pop();
    return kept;
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

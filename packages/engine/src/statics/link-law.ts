import { type Link, type Model, movedAt } from './model.js';
import type { Vector } from './scene.js';
import { plus, times } from './vector.js';

/** What a link does at one relative displacement, scaled: the force on its end `a`, and how that changes. */
export interface LinkForce {
  /** Along the axis, 0 or more. */
  normal: number;
  /** Across it. */
  x: number;
  y: number;
  z: number;
  /** dF/dg, row by row. */
  readonly tangent: Float64Array;
}

export const emptyForce = (): LinkForce => ({
  normal: 0,
  x: 0,
  y: 0,
  z: 0,
  tangent: new Float64Array(9),
});

/**
 * The law of a link:
 *
 *     N = max(0, preload + k (closing - open)),  closing = -g . axis
 *     T = T_held - kt (s - s_held),  brought back onto what rolls freely and into the disc |T| <= mu N
 *
 * where g is how far `a` has moved from `b`, and s its part across the axis. Written out in numbers: it is asked
 * thousands of times a second.
 *
 * Where the link has a bound, that stands in for mu N: then all forces come from a convex energy.
 */
export function linkForce(link: Link, gx: number, gy: number, gz: number, out: LinkForce): void {
  const n = link.axis;
  const k = out.tangent;
  const along = gx * n.x + gy * n.y + gz * n.z;
  const normal = link.preload + link.stiffness * (-along - link.open);
  // A support that just touches counts as closed in the tangent: else nothing would be there to begin with.
  const closed = normal >= 0;
  const bounded = link.bound >= 0;
  out.normal = closed ? normal : 0;
  out.x = 0;
  out.y = 0;
  out.z = 0;
  k.fill(0);
  if (closed) addOuter(k, -link.stiffness, n.x, n.y, n.z, n.x, n.y, n.z);
  if ((!closed && !bounded) || link.shear === 0 || link.friction === 0) return;

  const kt = link.shear;
  let tx = link.held.x - kt * (gx - along * n.x - link.slip.x);
  let ty = link.held.y - kt * (gy - along * n.y - link.slip.y);
  let tz = link.held.z - kt * (gz - along * n.z - link.slip.z);
  let free: Vector | undefined;
  if (link.rolling !== undefined) {
    const r = link.rolling.along;
    const push = tx * r.x + ty * r.y + tz * r.z;
    if (!(push < 0 ? link.rolling.forward : link.rolling.back)) {
      free = r;
      tx -= push * r.x;
      ty -= push * r.y;
      tz -= push * r.z;
    }
  }
  const pull = Math.sqrt(tx * tx + ty * ty + tz * tz);
  const most = bounded ? link.bound : link.friction * normal;
  const over = Math.max(0, pull - most);
  const part = over === 0 ? 1 : most / pull;
  out.x = tx * part;
  out.y = ty * part;
  out.z = tz * part;
  addAcross(k, -kt * part, n, free);
  if (over === 0) return;
  const ex = tx / pull;
  const ey = ty / pull;
  const ez = tz / pull;
  if (!bounded) addOuter(k, -link.friction * link.stiffness, ex, ey, ez, n.x, n.y, n.z);
  addOuter(k, kt * part, ex, ey, ez, ex, ey, ez);
}

/** Adds c (I - n n' - f f'). */
function addAcross(k: Float64Array, c: number, n: Vector, f: Vector | undefined): void {
  k[0] = (k[0] as number) + c;
  k[4] = (k[4] as number) + c;
  k[8] = (k[8] as number) + c;
  addOuter(k, -c, n.x, n.y, n.z, n.x, n.y, n.z);
  if (f !== undefined) addOuter(k, -c, f.x, f.y, f.z, f.x, f.y, f.z);
}

function addOuter(
  k: Float64Array,
  c: number,
  ax: number,
  ay: number,
  az: number,
  bx: number,
  by: number,
  bz: number,
): void {
  k[0] = (k[0] as number) + c * ax * bx;
  k[1] = (k[1] as number) + c * ax * by;
  k[2] = (k[2] as number) + c * ax * bz;
  k[3] = (k[3] as number) + c * ay * bx;
  k[4] = (k[4] as number) + c * ay * by;
  k[5] = (k[5] as number) + c * ay * bz;
  k[6] = (k[6] as number) + c * az * bx;
  k[7] = (k[7] as number) + c * az * by;
  k[8] = (k[8] as number) + c * az * bz;
}

/** How far `a` of a link has moved from `b`. */
export function relativeMove(q: Float64Array, link: Link): Vector {
  const a = movedAt(q, link.a);
  const b = movedAt(q, link.b);
  return { x: a.x - b.x, y: a.y - b.y, z: a.z - b.z };
}

/** A link at q, as vectors. */
export interface LinkAt {
  readonly link: Link;
  readonly move: Vector;
  readonly normal: number;
  readonly across: Vector;
  /** On `a`, normal and friction together. */
  readonly total: Vector;
}

/** All links at q. */
export function linksAt(model: Model, q: Float64Array): readonly LinkAt[] {
  const force = emptyForce();
  return model.links.map((link) => {
    const move = relativeMove(q, link);
    linkForce(link, move.x, move.y, move.z, force);
    const across = { x: force.x, y: force.y, z: force.z };
    return { link, move, normal: force.normal, across, total: plus(times(link.axis, force.normal), across) };
  });
}

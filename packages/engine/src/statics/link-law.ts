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
  closed: boolean;
  /** Whether it rolls freely along its wheel. */
  free: boolean;
  slips: boolean;
  /** Of the friction that would stop all slip, the share that is there; 0 where there is none at all. */
  part: number;
  /** The friction that would stop all slip, and where it slips its direction. */
  pull: number;
  ex: number;
  ey: number;
  ez: number;
  /** dF/dg, row by row. */
  readonly tangent: Float64Array;
}

export const emptyForce = (): LinkForce => ({
  normal: 0,
  x: 0,
  y: 0,
  z: 0,
  closed: false,
  free: false,
  slips: false,
  part: 0,
  pull: 0,
  ex: 0,
  ey: 0,
  ez: 0,
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
  if (!forceAlone(link, gx, gy, gz, out)) {
    out.tangent.fill(0);
    return;
  }
  const n = link.axis;
  const k = out.tangent;
  // A support that just touches counts as closed in the tangent: else nothing would be there to begin with.
  const kn = out.closed ? link.stiffness : 0;
  const { part, pull } = out;
  // The normal's share, and across it kt (I - n n' - f f'), the less where it slips.
  const kt = part === 0 && pull === 0 ? 0 : link.shear * part;
  const across = kt - kn;
  k[0] = across * n.x * n.x - kt;
  k[1] = across * n.x * n.y;
  k[2] = across * n.x * n.z;
  k[3] = k[1];
  k[4] = across * n.y * n.y - kt;
  k[5] = across * n.y * n.z;
  k[6] = k[2];
  k[7] = k[5];
  k[8] = across * n.z * n.z - kt;
  if (out.free && link.rolling !== undefined) {
    const f = link.rolling.along;
    addOuter(k, kt, f.x, f.y, f.z, f.x, f.y, f.z);
  }
  if (!out.slips) return;
  const { ex, ey, ez } = out;
  if (link.bound < 0) addOuter(k, -link.friction * link.stiffness, ex, ey, ez, n.x, n.y, n.z);
  addOuter(k, kt, ex, ey, ez, ex, ey, ez);
}

/** The force of `linkForce` without how it changes. @returns whether the link gives way to any motion at all. */
export function forceAlone(link: Link, gx: number, gy: number, gz: number, out: LinkForce): boolean {
  const n = link.axis;
  const along = gx * n.x + gy * n.y + gz * n.z;
  const normal = link.preload - link.stiffness * (along + link.open);
  const closed = normal >= 0;
  const bounded = link.bound >= 0;
  out.normal = closed ? normal : 0;
  out.x = 0;
  out.y = 0;
  out.z = 0;
  out.closed = closed;
  out.free = false;
  out.slips = false;
  out.part = 0;
  out.pull = 0;
  if (!closed && !bounded) return false;
  if (link.shear === 0 || link.friction === 0) return true;

  const kt = link.shear;
  let tx = link.held.x - kt * (gx - along * n.x - link.slip.x);
  let ty = link.held.y - kt * (gy - along * n.y - link.slip.y);
  let tz = link.held.z - kt * (gz - along * n.z - link.slip.z);
  if (link.rolling !== undefined) {
    const r = link.rolling.along;
    const push = tx * r.x + ty * r.y + tz * r.z;
    if (!(push < 0 ? link.rolling.forward : link.rolling.back)) {
      out.free = true;
      tx -= push * r.x;
      ty -= push * r.y;
      tz -= push * r.z;
    }
  }
  const pull = Math.sqrt(tx * tx + ty * ty + tz * tz);
  const most = bounded ? link.bound : link.friction * normal;
  out.pull = pull;
  if (pull > most) {
    out.slips = true;
    out.part = most / pull;
    out.ex = tx / pull;
    out.ey = ty / pull;
    out.ez = tz / pull;
    out.x = tx * out.part;
    out.y = ty * out.part;
    out.z = tz * out.part;
    return true;
  }
  out.part = 1;
  out.x = tx;
  out.y = ty;
  out.z = tz;
  return true;
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

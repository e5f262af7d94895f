import type { Link } from './model.js';
import type { Vector } from './scene.js';
import { dot, minus, origin, plus, size, times } from './vector.js';

/** What a link does at one relative displacement, scaled: the force on its end `a`, and how that changes. */
export interface LinkForce {
  /** Along the axis, 0 or more. */
  normal: number;
  /** Across it. */
  across: Vector;
  /** Rows of dF/dg, row by row. */
  readonly tangent: Float64Array;
}

export const emptyForce = (): LinkForce => ({ normal: 0, across: origin, tangent: new Float64Array(9) });

/**
 * The law of a link:
 *
 *     N = max(0, preload + k (closing - open)),  closing = -g . axis
 *     T = T_held - kt (s - s_held),  brought back onto what rolls freely and into the disc |T| <= mu N
 *
 * where g is how far `a` has moved from `b`, and s its part across the axis.
 *
 * @param sticks gives the tangent of a contact that does not slip in place of the true one: it is symmetric, and a
 * way on where the true one leads nowhere. The force is the same.
 */
export function linkForce(link: Link, g: Vector, out: LinkForce, sticks = false): LinkForce {
  const n = link.axis;
  const along = dot(g, n);
  const normal = link.preload + link.stiffness * (-along - link.open);
  const k = out.tangent;
  out.across = origin;
  // A support that just touches counts as closed in the tangent: else nothing would be there to begin with.
  if (!(normal >= 0)) {
    out.normal = 0;
    k.fill(0);
    return out;
  }
  out.normal = normal;
  outer(k, -link.stiffness, n, n, true);
  if (link.kind !== 'contact' || link.shear === 0 || link.friction === 0) return out;

  const s = minus(g, times(n, along));
  let t = minus(link.held, times(minus(s, link.slip), link.shear));
  const free = freeAlong(link, t);
  if (free !== undefined) t = minus(t, times(free, dot(t, free)));
  const pull = size(t);
  const most = link.friction * normal;
  if (sticks || pull <= most) {
    out.across = pull <= most ? t : times(t, most / pull);
    across(k, -link.shear, n, free);
    return out;
  }
  const e = times(t, 1 / pull);
  out.across = times(e, most);
  outer(k, -link.friction * link.stiffness, e, n, false);
  const soft = (link.shear * most) / pull;
  across(k, -soft, n, free);
  outer(k, soft, e, e, false);
  return out;
}

/** The direction along which a wheel rolls freely under this trial force; `undefined` where it is held. */
function freeAlong(link: Link, t: Vector): Vector | undefined {
  if (link.rolling === undefined) return undefined;
  const push = dot(t, link.rolling.along);
  const held = push < 0 ? link.rolling.forward : link.rolling.back;
  return held ? undefined : link.rolling.along;
}

/** Adds c (I - n n' - f f'). */
function across(k: Float64Array, c: number, n: Vector, f: Vector | undefined): void {
  k[0] = (k[0] as number) + c;
  k[4] = (k[4] as number) + c;
  k[8] = (k[8] as number) + c;
  outer(k, -c, n, n, false);
  if (f !== undefined) outer(k, -c, f, f, false);
}

function outer(k: Float64Array, c: number, a: Vector, b: Vector, anew: boolean): void {
  if (anew) k.fill(0);
  const ca = [c * a.x, c * a.y, c * a.z] as const;
  for (let i = 0; i < 3; i++) {
    const v = ca[i] as number;
    k[3 * i] = (k[3 * i] as number) + v * b.x;
    k[3 * i + 1] = (k[3 * i + 1] as number) + v * b.y;
    k[3 * i + 2] = (k[3 * i + 2] as number) + v * b.z;
  }
}

/** The whole force on `a`. */
export const totalOn = (link: Link, f: LinkForce): Vector => plus(times(link.axis, f.normal), f.across);

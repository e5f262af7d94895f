import type { BlockSystem } from './block-system.js';
import { emptyForce, forceAlone, type LinkForce, linkForce } from './link-law.js';
import type { Link, LinkEnd, Model } from './model.js';

/** Sum of all that acts on the unknowns at q: loads and links. Zero where everything is in balance. */
export function residual(model: Model, q: Float64Array, out: Float64Array): void {
  out.set(model.load);
  for (const link of model.links) {
    moveOf(link, q);
    if (!forceAlone(link, move.x, move.y, move.z, force)) continue;
    const { normal } = force;
    const n = link.axis;
    const x = n.x * normal + force.x;
    const y = n.y * normal + force.y;
    const z = n.z * normal + force.z;
    addAt(out, link.a, x, y, z);
    addAt(out, link.b, -x, -y, -z);
  }
}

/**
 * The analytic derivative of `residual` at q. Not symmetric where a contact slips.
 *
 * @param into rows of `stride` numbers; cleared first.
 */
export function tangent(model: Model, q: Float64Array, into: Float64Array, stride: number): void {
  into.fill(0);
  for (const link of model.links) {
    if (!tangentOf(link, q)) continue;
    const { a, b } = link;
    addBlock(into, a.first * stride + a.first, stride, a, a, force.tangent, 1);
    addBlock(into, a.first * stride + b.first, stride, a, b, force.tangent, -1);
    addBlock(into, b.first * stride + a.first, stride, b, a, force.tangent, -1);
    addBlock(into, b.first * stride + b.first, stride, b, b, force.tangent, 1);
  }
}

/** The same into the blocks of a system. */
export function tangentInto(model: Model, q: Float64Array, into: BlockSystem): void {
  const { store, at, stride } = into;
  store.fill(0);
  for (const [l, link] of model.links.entries()) {
    if (!tangentOf(link, q)) continue;
    const { a, b } = link;
    const i = 4 * l;
    addBlock(store, at[i] as number, stride[i] as number, a, a, force.tangent, 1);
    addBlock(store, at[i + 1] as number, stride[i + 1] as number, a, b, force.tangent, -1);
    addBlock(store, at[i + 2] as number, stride[i + 2] as number, b, a, force.tangent, -1);
    addBlock(store, at[i + 3] as number, stride[i + 3] as number, b, b, force.tangent, 1);
  }
}

// Room to work in, used within one call only.
const force: LinkForce = emptyForce();
const wide = new Float64Array(18);
const move = { x: 0, y: 0, z: 0 };

/** How far the ends of a link have moved apart, left in `move`. */
function moveOf({ a, b }: Link, q: Float64Array): void {
  let x = 0;
  let y = 0;
  let z = 0;
  if (a.first >= 0) {
    const i = a.first;
    x = q[i] as number;
    y = q[i + 1] as number;
    z = q[i + 2] as number;
    if (a.turns) {
      const tx = q[i + 3] as number;
      const ty = q[i + 4] as number;
      const tz = q[i + 5] as number;
      x += ty * a.arm.z - tz * a.arm.y;
      y += tz * a.arm.x - tx * a.arm.z;
      z += tx * a.arm.y - ty * a.arm.x;
    }
  }
  if (b.first >= 0) {
    const i = b.first;
    x -= q[i] as number;
    y -= q[i + 1] as number;
    z -= q[i + 2] as number;
    if (b.turns) {
      const tx = q[i + 3] as number;
      const ty = q[i + 4] as number;
      const tz = q[i + 5] as number;
      x -= ty * b.arm.z - tz * b.arm.y;
      y -= tz * b.arm.x - tx * b.arm.z;
      z -= tx * b.arm.y - ty * b.arm.x;
    }
  }
  move.x = x;
  move.y = y;
  move.z = z;
}

/** How the force of a link changes at q, left in `force`. @returns whether it gives way to any motion. */
function tangentOf(link: Link, q: Float64Array): boolean {
  moveOf(link, q);
  linkForce(link, move.x, move.y, move.z, force);
  const t = force.tangent;
  return t[0] !== 0 || t[4] !== 0 || t[8] !== 0;
}

function addAt(out: Float64Array, end: LinkEnd, x: number, y: number, z: number): void {
  const i = end.first;
  if (i < 0) return;
  add(out, i, x);
  add(out, i + 1, y);
  add(out, i + 2, z);
  if (!end.turns) return;
  const r = end.arm;
  add(out, i + 3, r.y * z - r.z * y);
  add(out, i + 4, r.z * x - r.x * z);
  add(out, i + 5, r.x * y - r.y * x);
}

/** Adds sign * D_i' K D_j, where D takes the unknowns of a member to the displacement of the end. */
function addBlock(
  into: Float64Array,
  top: number,
  stride: number,
  i: LinkEnd,
  j: LinkEnd,
  k: Float64Array,
  sign: number,
): void {
  if (i.first < 0 || j.first < 0) return;
  const columns = j.turns ? 6 : 3;
  const r = j.arm;
  for (let row = 0; row < 3; row++) {
    const x = sign * (k[3 * row] as number);
    const y = sign * (k[3 * row + 1] as number);
    const z = sign * (k[3 * row + 2] as number);
    wide[6 * row] = x;
    wide[6 * row + 1] = y;
    wide[6 * row + 2] = z;
    // Turning by t moves the end by t x r: the columns of that are (0, -rz, ry), (rz, 0, -rx), (-ry, rx, 0).
    wide[6 * row + 3] = z * r.y - y * r.z;
    wide[6 * row + 4] = x * r.z - z * r.x;
    wide[6 * row + 5] = y * r.x - x * r.y;
  }
  const a = i.arm;
  for (let column = 0; column < columns; column++) {
    const x = wide[column] as number;
    const y = wide[6 + column] as number;
    const z = wide[12 + column] as number;
    const at = top + column;
    add(into, at, x);
    add(into, at + stride, y);
    add(into, at + 2 * stride, z);
    if (!i.turns) continue;
    add(into, at + 3 * stride, a.y * z - a.z * y);
    add(into, at + 4 * stride, a.z * x - a.x * z);
    add(into, at + 5 * stride, a.x * y - a.y * x);
  }
}

const add = (into: Float64Array, at: number, v: number): void => {
  into[at] = (into[at] as number) + v;
};

import { emptyForce, linkForce, totalOn } from './link-law.js';
import { addForce, type LinkEnd, type Model, movedAt } from './model.js';
import { minus, times } from './vector.js';

/** Sum of all that acts on the unknowns at q: loads and links. Zero where everything is in balance. */
export function residual(model: Model, q: Float64Array, out: Float64Array): Float64Array {
  out.set(model.load);
  const force = emptyForce();
  for (const link of model.links) {
    linkForce(link, minus(movedAt(q, link.a), movedAt(q, link.b)), force);
    if (force.normal === 0) continue;
    const on = totalOn(link, force);
    addForce(out, link.a, on);
    addForce(out, link.b, times(on, -1));
  }
  return out;
}

/**
 * The analytic derivative of `residual` at q. Not symmetric where a contact slips.
 *
 * @param sticks takes every closed contact as one that does not slip.
 * @param into rows of `stride` numbers; cleared first.
 */
export function tangent(
  model: Model,
  q: Float64Array,
  into: Float64Array,
  stride: number,
  sticks: boolean,
): void {
  into.fill(0);
  const force = emptyForce();
  for (const link of model.links) {
    linkForce(link, minus(movedAt(q, link.a), movedAt(q, link.b)), force, sticks);
    addBlock(into, stride, link.a, link.a, force.tangent, 1);
    addBlock(into, stride, link.a, link.b, force.tangent, -1);
    addBlock(into, stride, link.b, link.a, force.tangent, -1);
    addBlock(into, stride, link.b, link.b, force.tangent, 1);
  }
}

const wide = new Float64Array(18);

/** Adds sign * D_i' K D_j, where D takes the unknowns of a member to the displacement of the end. */
function addBlock(
  into: Float64Array,
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
  for (let column = 0; column < columns; column++) {
    const x = wide[column] as number;
    const y = wide[6 + column] as number;
    const z = wide[12 + column] as number;
    add(into, i.first * stride + j.first + column, x);
    add(into, (i.first + 1) * stride + j.first + column, y);
    add(into, (i.first + 2) * stride + j.first + column, z);
    if (!i.turns) continue;
    const a = i.arm;
    add(into, (i.first + 3) * stride + j.first + column, a.y * z - a.z * y);
    add(into, (i.first + 4) * stride + j.first + column, a.z * x - a.x * z);
    add(into, (i.first + 5) * stride + j.first + column, a.x * y - a.y * x);
  }
}

const add = (into: Float64Array, at: number, v: number): void => {
  into[at] = (into[at] as number) + v;
};

import { emptyForce, forceAlone, type LinkForce } from './link-law.js';
import type { LinkEnd, Model } from './model.js';

/** How far the ends of each link are apart along a straight way, worked out once for many places on it. */
export class LinksAlong {
  private readonly at: Float64Array;
  private readonly way: Float64Array;
  private readonly force: LinkForce = emptyForce();

  constructor(links: number) {
    this.at = new Float64Array(3 * links);
    this.way = new Float64Array(3 * links);
  }

  /** Takes the way that begins at q. */
  along(model: Model, q: Float64Array, way: Float64Array): void {
    this.at.fill(0);
    this.way.fill(0);
    for (const [l, { a, b }] of model.links.entries()) {
      addMove(this.at, 3 * l, q, a, 1);
      addMove(this.at, 3 * l, q, b, -1);
      addMove(this.way, 3 * l, way, a, 1);
      addMove(this.way, 3 * l, way, b, -1);
    }
  }

  /** Work of the links for a step along the way, a part of the way on. */
  work(model: Model, part: number): number {
    const { at, way, force } = this;
    let sum = 0;
    for (let l = 0; l < model.links.length; l++) {
      const link = model.links[l];
      const i = 3 * l;
      const [x, y, z] = [way[i] as number, way[i + 1] as number, way[i + 2] as number];
      if (link === undefined) continue;
      const gx = (at[i] as number) + part * x;
      const gy = (at[i + 1] as number) + part * y;
      const gz = (at[i + 2] as number) + part * z;
      if (!forceAlone(link, gx, gy, gz, force)) continue;
      const { axis } = link;
      sum += force.normal * (axis.x * x + axis.y * y + axis.z * z) + force.x * x + force.y * y + force.z * z;
    }
    return sum;
  }
}

/** Adds how far an end has moved, by a sign, to three numbers. */
function addMove(to: Float64Array, i: number, q: Float64Array, { first, turns, arm }: LinkEnd, sign: number) {
  if (first < 0) return;
  let x = q[first] as number;
  let y = q[first + 1] as number;
  let z = q[first + 2] as number;
  if (turns) {
    const tx = q[first + 3] as number;
    const ty = q[first + 4] as number;
    const tz = q[first + 5] as number;
    x += ty * arm.z - tz * arm.y;
    y += tz * arm.x - tx * arm.z;
    z += tx * arm.y - ty * arm.x;
  }
  to[i] = (to[i] as number) + sign * x;
  to[i + 1] = (to[i + 1] as number) + sign * y;
  to[i + 2] = (to[i + 2] as number) + sign * z;
}

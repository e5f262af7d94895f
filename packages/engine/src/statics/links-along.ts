import { emptyForce, forceAlone, type LinkForce, relativeMove } from './link-law.js';
import type { Model } from './model.js';
import type { Vector } from './scene.js';

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
    for (const [l, link] of model.links.entries()) {
      put(this.at, 3 * l, relativeMove(q, link));
      put(this.way, 3 * l, relativeMove(way, link));
    }
  }

  /** Work of the links for a step along the way, a part of the way on. */
  work(model: Model, part: number): number {
    const { at, way, force } = this;
    let sum = 0;
    for (const [l, link] of model.links.entries()) {
      const i = 3 * l;
      const x = way[i] as number;
      const y = way[i + 1] as number;
      const z = way[i + 2] as number;
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

function put(to: Float64Array, i: number, { x, y, z }: Vector): void {
  to[i] = x;
  to[i + 1] = y;
  to[i + 2] = z;
}

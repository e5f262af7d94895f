import type { SpaceScene } from '@cribwright/drawing/page';
import { Group, LineSegments, type Material, Mesh, Vector3 } from 'three';
import { type Inks, type SpaceThing, spaceShape } from './space-shape.js';

interface Built {
  readonly thing: SpaceThing;
  readonly lit: boolean;
  readonly group: Group;
}

/** The elements that stand in space. One that did not change is left as it is. */
export class SpaceThings {
  readonly group = new Group();
  private readonly built = new Map<string, Built>();

  /** Puts up what is in a drawing, and takes down what is no longer in it. */
  show(things: readonly SpaceThing[], inks: Inks, lit: string | undefined): void {
    const gone = new Set(this.built.keys());
    for (const thing of things) {
      const { element } = thing.ref;
      gone.delete(element);
      const before = this.built.get(element);
      const own = element === lit;
      if (before?.thing === thing && before.lit === own) continue;
      this.take(element);
      const group = spaceShape(thing, inks, own);
      this.group.add(group);
      this.built.set(element, { thing, lit: own, group });
    }
    for (const element of gone) this.take(element);
  }

  /** Takes all down, as for another theme. */
  clear(): void {
    for (const element of [...this.built.keys()]) this.take(element);
  }

  private take(element: string): void {
    const own = this.built.get(element);
    if (own === undefined) return;
    this.built.delete(element);
    this.group.remove(own.group);
    discard(own.group);
  }
}

/** Frees what the graphics card holds for some shapes. */
export function discard(group: Group): void {
  group.traverse((part) => {
    if (part instanceof Mesh || part instanceof LineSegments) {
      part.geometry.dispose();
      for (const material of [part.material].flat() as Material[]) material.dispose();
    }
  });
  group.clear();
}

/** The middle of all that stands, and how far it reaches from there, m. */
export function reachOf(space: SpaceScene): { readonly middle: Vector3; readonly reach: number } {
  const low = new Vector3(Infinity, Infinity, Infinity);
  const high = new Vector3(-Infinity, -Infinity, -Infinity);
  const spot = new Vector3();
  for (const { solids } of space.things) {
    for (const solid of solids) {
      for (const { x, y, z } of solid.kind === 'block' ? solid.corners : [solid.from, solid.to]) {
        spot.set(x, y, z);
        low.min(spot);
        high.max(spot);
      }
    }
  }
  if (low.x > high.x) return { middle: new Vector3(), reach: 4 };
  return {
    middle: low.clone().add(high).multiplyScalar(0.5),
    reach: Math.max(2, low.distanceTo(high) / 2.4),
  };
}

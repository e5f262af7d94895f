import type { Tone } from './tone.js';
import type { Point3 } from './vector.js';

/** A piece of the scene in space, m. All views, flat or turning, are drawn from these. */
export type Solid =
  | {
      readonly kind: 'block';
      readonly key: string;
      readonly tone: Tone;
      /** Four corners going round below, then the four above them. */
      readonly corners: readonly Point3[];
    }
  | {
      readonly kind: 'cylinder';
      readonly key: string;
      readonly tone: Tone;
      readonly from: Point3;
      readonly to: Point3;
      readonly radius: number;
    }
  | {
      readonly kind: 'rod';
      readonly key: string;
      readonly tone: Tone;
      readonly from: Point3;
      readonly to: Point3;
      readonly thickness: number;
    };

/** The corners of each face of a block, going round as seen from outside: below, above, then the sides. */
export const blockFaces = [
  [0, 3, 2, 1],
  [4, 5, 6, 7],
  [0, 1, 5, 4],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 0, 4, 7],
] as const;

/** An upright block between two opposite corners. */
export const block = (key: string, tone: Tone, a: Point3, b: Point3): Solid => ({
  kind: 'block',
  key,
  tone,
  corners: [
    { x: a.x, y: a.y, z: a.z },
    { x: b.x, y: a.y, z: a.z },
    { x: b.x, y: b.y, z: a.z },
    { x: a.x, y: b.y, z: a.z },
    { x: a.x, y: a.y, z: b.z },
    { x: b.x, y: a.y, z: b.z },
    { x: b.x, y: b.y, z: b.z },
    { x: a.x, y: b.y, z: b.z },
  ],
});

/** A wedge-shaped or tapered block: a rectangle below and another above. */
export const tapered = (
  key: string,
  tone: Tone,
  below: { readonly x: readonly [number, number]; readonly y: readonly [number, number]; readonly z: number },
  above: { readonly x: readonly [number, number]; readonly y: readonly [number, number]; readonly z: number },
): Solid => ({
  kind: 'block',
  key,
  tone,
  corners: [below, above].flatMap(({ x, y, z }) => [
    { x: x[0], y: y[0], z },
    { x: x[1], y: y[0], z },
    { x: x[1], y: y[1], z },
    { x: x[0], y: y[1], z },
  ]),
});

export const moved = (solid: Solid, to: (p: Point3) => Point3): Solid =>
  solid.kind === 'block'
    ? { ...solid, corners: solid.corners.map(to) }
    : { ...solid, from: to(solid.from), to: to(solid.to) };

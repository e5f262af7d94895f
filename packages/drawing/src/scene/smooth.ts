import type { SheetPoint } from './scene.js';

/** One cubic piece: two handles and an end. */
export type Curve = readonly [SheetPoint, SheetPoint, SheetPoint];

/** A curve through all points (Catmull-Rom, tension one half), as cubic pieces from the first point on. */
export function smooth(points: readonly SheetPoint[], closed: boolean): readonly Curve[] {
  const count = points.length;
  const pick = (i: number): SheetPoint => {
    const index = closed ? (i + count) % count : Math.min(Math.max(i, 0), count - 1);
    return points[index] ?? { x: 0, y: 0 };
  };
  const pieces = closed ? count : count - 1;
  return Array.from({ length: Math.max(pieces, 0) }, (_, i) => {
    const [a, b, c, d] = [pick(i - 1), pick(i), pick(i + 1), pick(i + 2)];
    return [
      { x: b.x + (c.x - a.x) / 6, y: b.y + (c.y - a.y) / 6 },
      { x: c.x - (d.x - b.x) / 6, y: c.y - (d.y - b.y) / 6 },
      c,
    ];
  });
}

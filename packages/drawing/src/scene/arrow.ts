import type { SheetPoint } from './scene.js';

/** The three corners of an arrow head at `tip`, pointing away from `from`. */
export function arrowHead(
  from: SheetPoint,
  tip: SheetPoint,
  length: number,
): readonly [SheetPoint, SheetPoint, SheetPoint] {
  const run = Math.hypot(tip.x - from.x, tip.y - from.y) || 1;
  const [ux, uy] = [(tip.x - from.x) / run, (tip.y - from.y) / run];
  const [bx, by] = [tip.x - ux * length, tip.y - uy * length];
  const half = length * 0.32;
  return [tip, { x: bx - uy * half, y: by + ux * half }, { x: bx + uy * half, y: by - ux * half }];
}

/** A short slanted stroke across the end of a dimension line, as drafters put it. */
export function tick(end: SheetPoint, size: number): readonly [SheetPoint, SheetPoint] {
  const half = size / 2;
  return [
    { x: end.x - half, y: end.y + half },
    { x: end.x + half, y: end.y - half },
  ];
}

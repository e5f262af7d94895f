import type { SheetPoint } from './scene.js';

/**
 * The lines of a hatch at 45 degrees inside a shape, `spacing` apart. They stand on one grid for the whole sheet,
 * so that neighboring shapes are hatched alike. Even-odd rule; the shape may bulge inward.
 */
export function hatchLines(
  shape: readonly SheetPoint[],
  spacing: number,
  slope: 1 | -1,
): readonly (readonly [SheetPoint, SheetPoint])[] {
  // Along the direction (1, slope) the value x − slope·y stays the same: each hatch line is one such value.
  const value = (p: SheetPoint) => (p.x - slope * p.y) / Math.SQRT2;
  const values = shape.map(value);
  const first = Math.ceil(Math.min(...values) / spacing);
  const last = Math.floor(Math.max(...values) / spacing);
  const lines: (readonly [SheetPoint, SheetPoint])[] = [];
  for (let n = first; n <= last; n++) {
    const level = n * spacing;
    const crossings = shape.flatMap((a, i) => {
      const b = shape[(i + 1) % shape.length] ?? a;
      const [va, vb] = [value(a), value(b)];
      if (va < level === vb < level) return [];
      const t = (level - va) / (vb - va);
      return [{ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }];
    });
    crossings.sort((a, b) => a.x - b.x);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [from, to] = [crossings[i], crossings[i + 1]];
      if (from !== undefined && to !== undefined) lines.push([from, to]);
    }
  }
  return lines;
}

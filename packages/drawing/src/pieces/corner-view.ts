import { line, polygon } from '../scene/draw.js';
import type { Item, SheetPoint } from '../scene/scene.js';
import { blockFaces, type Solid } from '../scene/solid.js';
import type { Tone } from '../scene/tone.js';
import type { Point3 } from '../scene/vector.js';
import { outline, pointsOf, ring } from '../space/project.js';

type Flatten = (p: Point3) => SheetPoint;

/** The faces of a solid that are seen from a corner, lightest on top. */
export function seenFaces(
  solid: Solid,
  toSheet: Flatten,
  look: { readonly tone?: Tone; readonly clear?: boolean; readonly pale?: boolean } = {},
): readonly Item[] {
  const tone = look.tone ?? solid.tone;
  if (solid.kind === 'rod') {
    return [
      line(solid.key, tone, toSheet(solid.from), toSheet(solid.to), {
        width: tone === 'tie' ? 0.5 : 1,
        ...(tone === 'tie' ? { dash: 'short dash' as const } : {}),
      }),
    ];
  }
  if (solid.kind === 'cylinder') {
    const near = solid.from.x - solid.from.y > solid.to.x - solid.to.y ? solid.from : solid.to;
    return [
      polygon(`${solid.key} side`, tone, outline(pointsOf(solid).map(toSheet)), 'solid'),
      polygon(`${solid.key} face`, tone, ring(near, solid).map(toSheet), 'light'),
    ];
  }
  const flip = turned(solid.corners) ? 1 : -1;
  const corners = solid.corners.map(toSheet);
  const seen: Item[] = [];
  blockFaces.forEach((face, index) => {
    const points = face.map((i) => corners[i] ?? nowhere);
    // Seen from outside, the corners of a face go round one way; from inside, the other.
    if (area(points) * flip <= 1e-9) return;
    const end = tone === 'timber' && isEnd(solid, index);
    const pale = index === 1 || (look.pale === true && solid.tone === 'vehicle');
    const fill = look.clear === true ? 'none' : pale ? 'light' : 'solid';
    const key = `${solid.key} face ${index}`;
    seen.push(polygon(key, end ? 'timber end' : tone, points, fill, thin));
  });
  return seen;
}

const nowhere: SheetPoint = { x: 0, y: 0 };
const thin = { width: 0.2 } as const;

/** Twice the area of a shape, mm²; its sign tells which way its corners go round. */
function area(points: readonly SheetPoint[]): number {
  let sum = 0;
  let from = points.at(-1) ?? nowhere;
  for (const to of points) {
    sum += from.x * to.y - to.x * from.y;
    from = to;
  }
  return sum;
}

/** Whether the corners below go round the way `block` lists them, seen from above (sheet axes point down). */
const turned = (corners: readonly Point3[]): boolean => {
  const [a, b, c] = corners;
  if (a === undefined || b === undefined || c === undefined) return true;
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) < 0;
};

/** The small faces of a long timber show end grain. */
function isEnd(solid: Extract<Solid, { kind: 'block' }>, index: number): boolean {
  const [a, b, , d] = solid.corners;
  if (a === undefined || b === undefined || d === undefined) return false;
  const [long, wide] = [Math.hypot(b.x - a.x, b.y - a.y), Math.hypot(d.x - a.x, d.y - a.y)];
  return long > wide ? index === 3 || index === 5 : index === 2 || index === 4;
}

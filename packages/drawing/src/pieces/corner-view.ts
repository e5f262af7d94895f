import { line, polygon } from '../scene/draw.js';
import type { Item, Point, Tone } from '../scene/scene.js';
import { outline, pointsOf, ring } from '../space/project.js';
import type { Solid } from '../space/solid.js';
import type { Point3 } from '../space/vector.js';

type Flatten = (p: Point3) => Point;

const faces = [
  [0, 3, 2, 1],
  [4, 5, 6, 7],
  [0, 1, 5, 4],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 0, 4, 7],
] as const;

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
        ...(tone === 'tie' ? { dash: 'chain' as const } : {}),
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
  return faces.flatMap((face, index) => {
    const points = face.map((i) => solid.corners[i] ?? { x: 0, y: 0, z: 0 }).map(toSheet);
    // Seen from outside, the corners of a face go round one way; from inside, the other.
    if (area(points) * flip <= 1e-9) return [];
    return [
      polygon(
        `${solid.key} face ${index}`,
        tone === 'timber' && isEnd(solid, index) ? 'timber end' : tone,
        points,
        look.clear === true
          ? 'none'
          : index === 1 || (look.pale === true && solid.tone === 'vehicle')
            ? 'light'
            : 'solid',
        { width: 0.2 },
      ),
    ];
  });
}

const area = (points: readonly Point[]): number =>
  points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length] ?? p;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);

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

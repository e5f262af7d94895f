import { group, polygon } from '../scene/draw.js';
import type { Item, Point } from '../scene/scene.js';
import { outline, pointsOf } from '../space/project.js';
import type { Thing } from '../space/thing.js';
import type { Placing } from './place-on-sheet.js';

/**
 * What stands behind a body, as hidden edges are drawn: in broken lines over it. Without them its label would seem to
 * name the body.
 */
export function hiddenOutlines(
  behind: readonly Thing[],
  bodies: readonly Thing[],
  placing: Placing,
): readonly Item[] {
  const faces = bodies.map((body) => outlineOf(body, placing));
  return behind.flatMap((thing) => {
    const own = outlineOf(thing, placing);
    const [first] = own;
    if (first === undefined || !faces.some((face) => own.some((p) => inside(p, face)))) return [];
    return [
      group(
        `hidden ${thing.id}`,
        [polygon('outline', 'ghost', own, 'none', { dash: 'dashed', width: 0.25 })],
        { ref: thing.ref },
      ),
    ];
  });
}

const outlineOf = (thing: Thing, { toSheet }: Placing): readonly Point[] =>
  outline(thing.solids.flatMap((solid) => pointsOf(solid).map(toSheet)));

/** Whether a point lies inside an outline that bulges nowhere inward. */
function inside(p: Point, face: readonly Point[]): boolean {
  const turns = face.map((a, i) => {
    const b = face[(i + 1) % face.length] ?? a;
    return Math.sign((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
  });
  return face.length > 2 && (turns.every((t) => t > 0) || turns.every((t) => t < 0));
}

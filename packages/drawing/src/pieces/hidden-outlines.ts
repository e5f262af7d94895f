import { group, line, polygon } from '../scene/draw.js';
import type { Item, SheetPoint } from '../scene/scene.js';
import type { Solid } from '../scene/solid.js';
import { outline, pointsOf } from '../space/project.js';
import type { Thing } from '../space/thing.js';
import { thingKinds } from '../space/thing-kinds.js';
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
        thingKinds[thing.kind].hidden === 'outline'
          ? [polygon('outline', 'ghost', own, 'none', dashed)]
          : thing.solids.map((solid) => edge(solid, placing)),
        { ref: thing.ref },
      ),
    ];
  });
}

const dashed = { dash: 'dashed', width: 0.25 } as const;

/** One piece of a strut or a tie: its shaft as a line, its plates and posts in outline. */
const edge = (solid: Solid, { toSheet }: Placing): Item =>
  solid.kind === 'rod'
    ? line(solid.key, 'ghost', toSheet(solid.from), toSheet(solid.to), dashed)
    : polygon(solid.key, 'ghost', outline(pointsOf(solid).map(toSheet)), 'none', dashed);

const outlineOf = (thing: Thing, { toSheet }: Placing): readonly SheetPoint[] =>
  outline(thing.solids.flatMap((solid) => pointsOf(solid).map(toSheet)));

/** Whether a point lies inside an outline that bulges nowhere inward. */
function inside(p: SheetPoint, face: readonly SheetPoint[]): boolean {
  const turns = face.map((a, i) => {
    const b = face[(i + 1) % face.length] ?? a;
    return Math.sign((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
  });
  return face.length > 2 && (turns.every((t) => t > 0) || turns.every((t) => t < 0));
}

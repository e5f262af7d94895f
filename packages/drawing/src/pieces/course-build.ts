import { message, name, term } from '@cribwright/messages';
import type { PlacedCrib } from '@cribwright/model';
import { around, boundsOf, join } from '../scene/bounds.js';
import { at, group, line, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { block, type Solid } from '../scene/solid.js';
import { at3, middle, type Point3 } from '../scene/vector.js';
import { type } from '../sheet/sizes.js';
import { fromCorner, pointsOf } from '../space/project.js';
import type { Say } from '../text/say.js';
import { seenFaces } from './corner-view.js';

interface Field {
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

const most = 96;

const runs = {
  lengthwise: ['piece.course-lengthwise', 'piece.course-solid-lengthwise'],
  crosswise: ['piece.course-crosswise', 'piece.course-solid-crosswise'],
} as const;

/** The build course by course, drawn apart, from the lowest up, each with its number and count of timbers. */
export function courseBuild(
  { crib, courses }: PlacedCrib,
  field: Field,
  say: Say,
): { readonly item: Item; readonly bottom: number } {
  const { length, depth, width } = crib.timber;
  const lift = depth * 1.55;
  const solids = courses.map((course) => ({
    course,
    blocks: course.offsets.map((offset, i): Solid => {
      const [dx, dy] = course.runs === 'lengthwise' ? [length / 2, width / 2] : [width / 2, length / 2];
      const [cx, cy] = course.runs === 'lengthwise' ? [0, offset] : [offset, 0];
      const z = (course.number - 1) * (depth + lift);
      return block(`timber ${i + 1}`, 'timber', at3(cx - dx, cy - dy, z), at3(cx + dx, cy + dy, z + depth));
    }),
  }));
  const world = around(solids.flatMap((s) => s.blocks.flatMap(pointsOf)).map(fromCorner.flat));
  const room = field.right - field.left - 34;
  const k = Math.min(room / (world.right - world.left), most / (world.bottom - world.top));
  const top = field.top + 8;
  const left = field.left + 2;
  const toSheet = (p: Point3) => {
    const flat = fromCorner.flat(p);
    return at(left + (flat.x - world.left) * k, top + (flat.y - world.top) * k);
  };
  // With many courses only some are written beside, so that the words keep apart.
  const step = (depth + lift) * k;
  const every = Math.max(1, Math.ceil((type.small * 1.3) / step));
  const items = solids.map(({ course, blocks }) => {
    const ordered = [...blocks].sort(
      (a, b) => fromCorner.near(middle(pointsOf(a))) - fromCorner.near(middle(pointsOf(b))),
    );
    const shapes = ordered.flatMap((b) => seenFaces(b, toSheet));
    const edge = shapes.map(boundsOf).reduce(join, around([]));
    const level = toSheet(at3(length / 2, length / 2, (course.number - 1) * (depth + lift) + depth / 2)).y;
    const told = (course.number - 1) % every === 0 || course.number === courses.length;
    const words = say.message(
      message(runs[course.runs][course.solid ? 1 : 0], {
        number: name(String(course.number)),
        timbers: name(String(course.offsets.length)),
      }),
    );
    return group(`course ${course.number}`, [
      ...shapes,
      ...(told && every === 1
        ? [
            line('leader', 'dimension', at(edge.right + 0.5, level), at(edge.right + 3, level), {
              width: 0.12,
            }),
            text('words', at(edge.right + 3.8, level + 1), words, type.small, { tone: 'dimension' }),
          ]
        : told
          ? [text('words', at(edge.right + 3.8, level + 1), words, type.small, { tone: 'dimension' })]
          : []),
    ]);
  });
  return {
    item: group('course build', [
      text('title', at(field.left, field.top + 2), say.message(term('piece.course-by-course')), type.label, {
        weight: 'bold',
      }),
      ...items,
    ]),
    bottom: top + (world.bottom - world.top) * k + 4,
  };
}

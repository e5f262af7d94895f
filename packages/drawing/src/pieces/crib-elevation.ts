import { message, name, term } from '@cribwright/messages';
import type { PlacedCrib } from '@cribwright/model';
import type { Look } from '../look/look.js';
import { at, group, line, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { dimensionLine } from '../sheet/dimension-line.js';
import { type } from '../sheet/sizes.js';
import { nameOf } from '../words/name-of.js';
import { cribTop, type Field } from './crib-top.js';

/** One face of a crib, from the ground up, with its height, its limit, its width and its overhang. */
export function cribElevation(
  placed: PlacedCrib,
  look: Look,
  field: Field,
): { readonly item: Item; readonly bottom: number } {
  const k = field.scale.perMeter;
  const { crib } = placed;
  const { timber } = crib;
  const ground = field.top + field.high * k;
  const half = (timber.length / 2) * k;
  const y = (height: number) => ground - height * k;
  const lengthwiseSeen = field.face === 'side' ? 'lengthwise' : 'crosswise';
  const shapes = placed.courses.flatMap((course): readonly Item[] => {
    const deep = timber.depth * k;
    const key = `course ${course.number}`;
    if (course.runs === lengthwiseSeen)
      return [
        rectangle(key, 'timber', field.center - half, y(course.bottom) - deep, half * 2, deep, 'light'),
      ];
    const wide = timber.width * k;
    return course.offsets.flatMap((offset, i) =>
      endGrain(
        `${key} timber ${i + 1}`,
        field.center + offset * k - wide / 2,
        y(course.bottom) - deep,
        wide,
        deep,
      ),
    );
  });
  const bottom = ground + 16;
  const from = term(field.face === 'side' ? 'piece.from-driver-side' : 'piece.from-behind');
  const called = nameOf({ id: crib.id, kind: 'crib', name: crib.name, ref: crib.ref, solids: [] }, look);
  return {
    bottom: bottom + 4,
    item: group(
      `face ${field.face}`,
      [
        text('title', at(field.center, field.top - 7), look.say.message(from), type.label, {
          anchor: 'middle',
          weight: 'bold',
        }),
        line('ground', 'ground', at(field.center - half - 8, ground), at(field.center + half + 8, ground)),
        ...shapes,
        ...cribTop(placed, look, field, y),
        ...(field.face === 'side' ? heights(placed, look, field, y) : []),
        ...widths(placed, look, field, ground),
      ],
      {
        ref: crib.ref,
        name: look.say.message(message('piece.seen', { crib: name(called), from })),
      },
    ),
  };
}

/** The height of the courses, which the limit is for; where there are shims, the height with them beside it. */
function heights(
  { crib, height, heightWithShims }: PlacedCrib,
  look: Look,
  field: Field,
  y: (height: number) => number,
): readonly Item[] {
  const x = field.center - (crib.timber.length / 2) * field.scale.perMeter;
  const { short } = look.say;
  const shims = look.say.message(message('piece.with-shims', { height: name(short(heightWithShims, 'up')) }));
  return [
    dimensionLine('height', at(x, y(0)), at(x, y(height)), short(height, 'up'), -7),
    ...(crib.shims > 0
      ? [dimensionLine('height with shims', at(x, y(0)), at(x, y(heightWithShims)), shims, -13)]
      : []),
  ];
}

/** The end of a timber with its two diagonals, as cut wood is drawn. */
export const endGrain = (key: string, x: number, y: number, wide: number, deep: number): readonly Item[] => [
  rectangle(key, 'timber end', x, y, wide, deep, 'light'),
  line(`${key} a`, 'timber end', at(x, y), at(x + wide, y + deep), { width: 0.12 }),
  line(`${key} b`, 'timber end', at(x + wide, y), at(x, y + deep), { width: 0.12 }),
];

/** What a face shows of the width: outside to outside of its contacts, and the timber. */
function widths(
  { crib, widths: across }: PlacedCrib,
  look: Look,
  field: Field,
  ground: number,
): readonly Item[] {
  const k = field.scale.perMeter;
  const half = (crib.timber.length / 2) * k;
  const contacts = field.face === 'side' ? across.lengthwise : across.crosswise;
  const reach = (contacts / 2) * k;
  const { short } = look.say;
  return [
    dimensionLine(
      'contacts',
      at(field.center - reach, ground),
      at(field.center + reach, ground),
      short(contacts, 'down'),
      6,
    ),
    dimensionLine(
      'timber',
      at(field.center - half, ground),
      at(field.center + half, ground),
      short(crib.timber.length),
      12,
    ),
  ];
}

import type { Crib, Figure } from '@cribwright/engine';
import { at, group, line, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { dimensionLine } from '../sheet/dimension-line.js';
import { type } from '../sheet/sizes.js';
import { coursesOf, stackHeight } from '../space/crib-solids.js';
import type { Look } from '../views/look.js';
import { cribTop, type Field } from './crib-top.js';
import { nameOf } from './name-of.js';

/** One face of a crib, from the ground up, with its height, its limit, its width and its overhang. */
export function cribElevation(
  crib: Crib,
  look: Look,
  field: Field,
): { readonly item: Item; readonly bottom: number } {
  const k = field.scale.perMeter;
  const { timber } = crib;
  const ground = field.top + field.high * k;
  const half = (timber.length / 2) * k;
  const y = (height: number) => ground - height * k;
  const stack = stackHeight(crib);
  const figures = look.support(crib.id)?.figures ?? {};
  const lengthwiseSeen = field.face === 'side' ? 'lengthwise' : 'crosswise';
  const shapes = coursesOf(crib).flatMap((course): readonly Item[] => {
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
  const seen = field.face === 'side' ? 'from the driver side' : 'from behind';
  return {
    bottom: bottom + 4,
    item: group(
      `face ${field.face}`,
      [
        text('title', at(field.center, field.top - 7), seen, type.label, {
          anchor: 'middle',
          weight: 'bold',
        }),
        line('ground', 'ground', at(field.center - half - 8, ground), at(field.center + half + 8, ground)),
        ...shapes,
        ...cribTop(crib, look, field, y),
        ...(field.face === 'side'
          ? [
              dimensionLine(
                'height',
                at(field.center - half, ground),
                at(field.center - half, y(stack)),
                heightWords(figures.height, stack, look),
                -7,
              ),
            ]
          : []),
        ...widths(crib, look, field, ground),
      ],
      {
        ref: crib.ref,
        name: `${nameOf({ id: crib.id, kind: 'crib', name: crib.name, ref: crib.ref, solids: [] }, look)}, seen ${seen}`,
      },
    ),
  };
}

/** What the engine says of the height, where it measures what is drawn here: timbers and shims. */
const heightWords = (height: Figure | undefined, stack: number, look: Look): string =>
  height?.value !== undefined && Math.abs(height.value.high - stack) < 0.001
    ? look.say.figure(height)
    : look.say.short(stack);

/** The end of a timber with its two diagonals, as cut wood is drawn. */
export const endGrain = (key: string, x: number, y: number, wide: number, deep: number): readonly Item[] => [
  rectangle(key, 'timber end', x, y, wide, deep, 'light'),
  line(`${key} a`, 'timber end', at(x, y), at(x + wide, y + deep), { width: 0.12 }),
  line(`${key} b`, 'timber end', at(x + wide, y), at(x, y + deep), { width: 0.12 }),
];

function widths(crib: Crib, look: Look, field: Field, ground: number): readonly Item[] {
  const k = field.scale.perMeter;
  const half = (crib.timber.length / 2) * k;
  const reach = half - crib.overhang * k;
  const { short } = look.say;
  const contacts = crib.timber.length - 2 * crib.overhang;
  const width = look.support(crib.id)?.figures.width;
  return [
    dimensionLine(
      'contacts',
      at(field.center - reach, ground),
      at(field.center + reach, ground),
      width === undefined ? short(contacts) : look.say.figure(width),
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

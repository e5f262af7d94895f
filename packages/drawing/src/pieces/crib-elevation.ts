import type { Crib, Figure } from '@cribwright/engine';
import { at, group, line, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { dimensionLine } from '../sheet/dimension-line.js';
import { type } from '../sheet/sizes.js';
import type { Scale } from '../sheet/standard-scale.js';
import { baseHeight, captureHeight, coursesOf, stackHeight, wedgeGap } from '../space/crib-solids.js';
import type { Look } from '../views/look.js';
import { nameOf } from './name-of.js';

interface Field {
  /** `side`: seen from the driver side. `end`: seen from behind. */
  readonly face: 'side' | 'end';
  readonly scale: Scale;
  readonly top: number;
  /** Middle of the crib on the sheet. */
  readonly centre: number;
  /** The tallest thing drawn, m. */
  readonly high: number;
}

/** One face of a crib, from the ground up, with its height, its limit, its width and its overhang. */
export function cribElevation(
  crib: Crib,
  look: Look,
  field: Field,
): { readonly item: Item; readonly bottom: number } {
  const k = field.scale.perMetre;
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
        rectangle(key, 'timber', field.centre - half, y(course.bottom) - deep, half * 2, deep, 'light'),
      ];
    const wide = timber.width * k;
    return course.offsets.flatMap((offset, i) =>
      endGrain(
        `${key} timber ${i + 1}`,
        field.centre + offset * k - wide / 2,
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
        text('title', at(field.centre, field.top - 7), seen, type.label, {
          anchor: 'middle',
          weight: 'bold',
        }),
        line('ground', 'ground', at(field.centre - half - 8, ground), at(field.centre + half + 8, ground)),
        ...shapes,
        ...shims(crib, field, y),
        ...wedgeItems(crib, look, field, y),
        ...captured(crib, look, field, y),
        ...limitLine(crib, look, field, y),
        ...(field.face === 'side'
          ? [
              dimensionLine(
                'height',
                at(field.centre - half, ground),
                at(field.centre - half, y(stack)),
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

type Height = (metres: number) => number;

function shims(crib: Crib, field: Field, y: Height): readonly Item[] {
  if (crib.shims <= 0) return [];
  const reach = (crib.timber.length / 2 - crib.overhang) * field.scale.perMetre;
  const top = y(stackHeight(crib));
  return [
    rectangle(
      'shims',
      'pad',
      field.centre - reach,
      top,
      reach * 2,
      crib.shims * field.scale.perMetre,
      'light',
    ),
  ];
}

function wedgeItems(crib: Crib, look: Look, field: Field, y: Height): readonly Item[] {
  const gap = wedgeGap(crib, look.plan);
  if (crib.wedges === undefined || gap === undefined || gap <= 0) return [];
  const k = field.scale.perMetre;
  const stack = stackHeight(crib);
  const closes = gap <= crib.wedges.travel.high + 1e-6;
  const high = Math.min(gap, crib.wedges.travel.high);
  const half = crib.timber.width / 2;
  const reach = crib.timber.length / 2 - crib.overhang - half;
  return [-reach, reach].flatMap((place, i): readonly Item[] => {
    const x = field.centre + (place - half) * k;
    const wide = crib.timber.width * k;
    return [
      rectangle(`wedge ${i}`, 'wedge', x, y(stack + high), wide, high * k, closes ? 'light' : 'none'),
      line(`slope ${i}`, 'wedge', at(x, y(stack)), at(x + wide, y(stack + high))),
    ];
  });
}

/** The underside that is to be captured. */
function captured(crib: Crib, look: Look, field: Field, y: Height): readonly Item[] {
  const capture = captureHeight(crib, look.plan);
  if (capture === undefined) return [];
  const above = capture - baseHeight(crib, look.plan);
  if (above > field.high + 1e-6) return [];
  const half = (crib.timber.length / 2) * field.scale.perMetre + 5;
  const level = y(above);
  const strokes = Math.floor((2 * half) / 4);
  return [
    line('captured', 'vehicle', at(field.centre - half, level), at(field.centre + half, level), {
      width: 0.6,
    }),
    ...Array.from({ length: strokes }, (_, i) =>
      line(
        `captured ${i}`,
        'vehicle',
        at(field.centre - half + i * 4, level),
        at(field.centre - half + i * 4 + 2, level - 2),
        { width: 0.15 },
      ),
    ),
  ];
}

function limitLine(crib: Crib, look: Look, field: Field, y: Height): readonly Item[] {
  const limit = look.support(crib.id)?.figures.heightLimit;
  if (limit?.value === undefined || field.face !== 'end') return [];
  const over = stackHeight(crib) > limit.value.low * (1 + 1e-9);
  const half = (crib.timber.length / 2) * field.scale.perMetre;
  const tone = over ? 'danger' : 'good';
  const words = `limit ${look.say.figure(limit)}`;
  const [left, right] = [field.centre - half - 3, field.centre + half + 3];
  if (limit.value.low > field.high + 1e-6) {
    // Higher than what is drawn: an arrow points up to it.
    const [x, level] = [right + 4, field.top + 1.5];
    return [
      line('limit', tone, at(x, level + 5), at(x, level), { head: 'arrow', width: 0.5 }),
      text('limit words', at(x + 2, level + 3.5), words, type.dimension, {
        tone,
        weight: 'bold',
        halo: true,
      }),
    ];
  }
  const level = y(limit.value.low);
  return [
    line('limit', tone, at(left, level), at(right, level), { dash: 'chain', width: 0.5 }),
    text('limit words', at(right + 1, level + 1), words, type.dimension, {
      tone,
      weight: 'bold',
      halo: true,
    }),
  ];
}

function widths(crib: Crib, look: Look, field: Field, ground: number): readonly Item[] {
  const k = field.scale.perMetre;
  const half = (crib.timber.length / 2) * k;
  const reach = half - crib.overhang * k;
  const { short } = look.say;
  const contacts = crib.timber.length - 2 * crib.overhang;
  const width = look.support(crib.id)?.figures.width;
  return [
    dimensionLine(
      'contacts',
      at(field.centre - reach, ground),
      at(field.centre + reach, ground),
      width === undefined ? short(contacts) : look.say.figure(width),
      6,
    ),
    dimensionLine(
      'timber',
      at(field.centre - half, ground),
      at(field.centre + half, ground),
      short(crib.timber.length),
      12,
    ),
  ];
}

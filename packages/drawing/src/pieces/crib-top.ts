import type { Crib } from '@cribwright/engine';
import { at, line, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { type } from '../sheet/sizes.js';
import type { Scale } from '../sheet/standard-scale.js';
import { baseHeight, captureHeight, stackHeight, wedgeGap } from '../space/crib-solids.js';
import type { Look } from '../views/look.js';

/** Where one face of a crib is drawn. */
export interface Field {
  /** `side`: seen from the driver side. `end`: seen from behind. */
  readonly face: 'side' | 'end';
  readonly scale: Scale;
  readonly top: number;
  /** Middle of the crib on the sheet. */
  readonly center: number;
  /** The tallest thing drawn, m. */
  readonly high: number;
}

/** What closes the gap over a crib's timbers, what it meets there, and how high it may stand. */
export const cribTop = (crib: Crib, look: Look, field: Field, y: Height): readonly Item[] => [
  ...shims(crib, field, y),
  ...wedgeItems(crib, look, field, y),
  ...captured(crib, look, field, y),
  ...limitLine(crib, look, field, y),
];

type Height = (meters: number) => number;

function shims(crib: Crib, field: Field, y: Height): readonly Item[] {
  if (crib.shims <= 0) return [];
  const reach = (crib.timber.length / 2 - crib.overhang) * field.scale.perMeter;
  const top = y(stackHeight(crib));
  return [
    rectangle(
      'shims',
      'pad',
      field.center - reach,
      top,
      reach * 2,
      crib.shims * field.scale.perMeter,
      'light',
    ),
  ];
}

function wedgeItems(crib: Crib, look: Look, field: Field, y: Height): readonly Item[] {
  const gap = wedgeGap(crib, look.plan);
  if (crib.wedges === undefined || gap === undefined || gap <= 0) return [];
  const k = field.scale.perMeter;
  const stack = stackHeight(crib);
  const closes = gap <= crib.wedges.travel.high + 1e-6;
  const high = Math.min(gap, crib.wedges.travel.high);
  const half = crib.timber.width / 2;
  const reach = crib.timber.length / 2 - crib.overhang - half;
  return [-reach, reach].flatMap((place, i): readonly Item[] => {
    const x = field.center + (place - half) * k;
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
  const half = (crib.timber.length / 2) * field.scale.perMeter + 5;
  const level = y(above);
  const strokes = Math.floor((2 * half) / 4);
  return [
    line('captured', 'vehicle', at(field.center - half, level), at(field.center + half, level), {
      width: 0.6,
    }),
    ...Array.from({ length: strokes }, (_, i) =>
      line(
        `captured ${i}`,
        'vehicle',
        at(field.center - half + i * 4, level),
        at(field.center - half + i * 4 + 2, level - 2),
        { width: 0.15 },
      ),
    ),
  ];
}

function limitLine(crib: Crib, look: Look, field: Field, y: Height): readonly Item[] {
  const limit = look.support(crib.id)?.figures.heightLimit;
  if (limit?.value === undefined || field.face !== 'end') return [];
  const over = stackHeight(crib) > limit.value.low * (1 + 1e-9);
  const half = (crib.timber.length / 2) * field.scale.perMeter;
  const tone = over ? 'danger' : 'good';
  const words = `limit ${look.say.figure(limit)}`;
  const [left, right] = [field.center - half - 3, field.center + half + 3];
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
    line('limit', tone, at(left, level), at(right, level), { dash: 'dashed', width: 0.5 }),
    text('limit words', at(right + 1, level + 1), words, type.dimension, {
      tone,
      weight: 'bold',
      halo: true,
    }),
  ];
}

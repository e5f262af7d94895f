import { message, name } from '@cribwright/messages';
import type { PlacedCrib } from '@cribwright/model';
import type { Look } from '../look/look.js';
import { at, line, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { type } from '../sheet/sizes.js';
import type { Scale } from '../sheet/standard-scale.js';
import { baseHeight } from '../space/crib-solids.js';

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
export const cribTop = (placed: PlacedCrib, look: Look, field: Field, y: Height): readonly Item[] => [
  ...shims(placed, field, y),
  ...wedgeItems(placed, field, y),
  ...captured(placed, field, y),
  ...limitLine(placed, look, field, y),
];

type Height = (meters: number) => number;

/** Outside to outside of the contacts that one face shows, m. */
const contactWidth = ({ widths }: PlacedCrib, { face }: Field): number =>
  face === 'side' ? widths.lengthwise : widths.crosswise;

function shims(placed: PlacedCrib, field: Field, y: Height): readonly Item[] {
  const { crib, heightWithShims } = placed;
  if (crib.shims <= 0) return [];
  const k = field.scale.perMeter;
  const wide = contactWidth(placed, field) * k;
  const [x, top] = [field.center - wide / 2, y(heightWithShims)];
  return [rectangle('shims', 'pad', x, top, wide, crib.shims * k, 'light')];
}

function wedgeItems(placed: PlacedCrib, field: Field, y: Height): readonly Item[] {
  const { crib, gap, heightWithShims: stack, heightWithWedges } = placed;
  if (crib.wedges === undefined || gap === undefined || gap.low <= 0) return [];
  const k = field.scale.perMeter;
  const closes = heightWithWedges !== undefined;
  const high = Math.min(gap.low, crib.wedges.travel.high);
  const axis = field.face === 'side' ? 'x' : 'y';
  const places = new Set(placed.contacts.map((c) => c[axis] - crib.at[axis]));
  return [...places].flatMap((place, i): readonly Item[] => {
    const x = field.center + (place - crib.timber.width / 2) * k;
    const wide = crib.timber.width * k;
    return [
      rectangle(`wedge ${i}`, 'wedge', x, y(stack + high), wide, high * k, closes ? 'light' : 'none'),
      line(`slope ${i}`, 'wedge', at(x, y(stack)), at(x + wide, y(stack + high))),
    ];
  });
}

/** The underside that is to be captured. */
function captured(placed: PlacedCrib, field: Field, y: Height): readonly Item[] {
  if (placed.captured === undefined) return [];
  const above = placed.captured.low - baseHeight(placed);
  if (above > field.high + 1e-6) return [];
  const half = (placed.crib.timber.length / 2) * field.scale.perMeter + 5;
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

function limitLine({ crib, height }: PlacedCrib, look: Look, field: Field, y: Height): readonly Item[] {
  const limit = look.support(crib.id)?.figures.heightLimit;
  if (limit?.value === undefined || field.face !== 'end') return [];
  const over = height > limit.value.low * (1 + 1e-9);
  const half = (crib.timber.length / 2) * field.scale.perMeter;
  const tone = over ? 'danger' : 'good';
  const words = look.say.message(message('piece.limit', { limit: name(look.say.figure(limit)) }));
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

import { term } from '@cribwright/messages';
import { inch } from '@cribwright/units';
import type { Look } from '../look/look.js';
import { at, group, line, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { type } from '../sheet/sizes.js';

/** The field of the chart, mm. */
export const [wide, high] = [144, 96];

/** Width across, height up, with marks in the reader's units. */
export function heightAxes(
  look: Look,
  left: number,
  top: number,
  mostWidth: number,
  mostHeight: number,
): readonly Item[] {
  const unit = look.say.words.units === 'us' ? inch : 0.01;
  const step = look.say.words.units === 'us' ? [6, 12] : [10, 25];
  const marks = (most: number, by: number) =>
    Array.from({ length: Math.floor(most / (by * unit)) + 1 }, (_, i) => i * by * unit);
  return [
    line('across', 'scale', at(left, top + high), at(left + wide, top + high)),
    line('up', 'scale', at(left, top), at(left, top + high)),
    ...marks(mostWidth, step[0] ?? 6).map((w) => {
      const x = left + (wide * w) / mostWidth;
      return group(`width ${w.toFixed(3)}`, [
        line('mark', 'scale', at(x, top + high), at(x, top + high + 1.2)),
        text('words', at(x, top + high + 4.6), look.say.short(w), type.small, {
          anchor: 'middle',
          tone: 'dimension',
        }),
      ]);
    }),
    ...marks(mostHeight, step[1] ?? 12).map((h) => {
      const y = top + high - (high * h) / mostHeight;
      return group(`height ${h.toFixed(3)}`, [
        line('mark', 'faint', at(left - 1.2, y), at(left + wide, y)),
        text('words', at(left - 2, y + 1), look.say.short(h), type.small, {
          anchor: 'end',
          tone: 'dimension',
        }),
      ]);
    }),
    text(
      'across words',
      at(left + wide / 2, top + high + 10),
      look.say.message(term('piece.contact-width')),
      type.dimension,
      { anchor: 'middle' },
    ),
    text(
      'up words',
      at(left - 16, top + high / 2),
      look.say.message(term('piece.crib-height')),
      type.dimension,
      {
        anchor: 'middle',
        turn: -90,
      },
    ),
  ];
}

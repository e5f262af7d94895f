import { foot } from '@cribwright/units';
import { at, group, line, rectangle, text } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { type } from './sizes.js';
import type { Scale } from './standard-scale.js';

const steps = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** A bar of four equal pieces, black and white by turns, with its end marked in the reader's units. */
export function scaleBar(
  scale: Scale,
  display: 'us' | 'si',
  right: number,
  y: number,
): { readonly items: readonly Item[]; readonly left: number } {
  const unit = display === 'us' ? foot : 1;
  const piece = [...steps].reverse().find((s) => s * unit * scale.perMeter * 4 <= 48) ?? steps[0] ?? 0.1;
  const wide = piece * unit * scale.perMeter;
  const left = right - wide * 4 - 8;
  const high = 1.5;
  const blocks = [0, 1, 2, 3].map((i) =>
    rectangle(`piece ${i}`, 'scale', left + i * wide, y, wide, high, i % 2 === 0 ? 'solid' : 'light'),
  );
  const number = (i: number) => String(Math.round(piece * i * 100) / 100);
  const ends = [0, 2, 4].map((i) =>
    text(
      `mark ${i}`,
      at(left + i * wide, y - 1.2),
      i === 4 ? `${number(i)} ${display === 'us' ? 'ft' : 'm'}` : number(i),
      type.small,
      { anchor: i === 4 ? 'start' : 'middle', tone: 'dimension' },
    ),
  );
  return {
    items: [
      group('scale bar', [
        ...blocks,
        line('edge', 'scale', at(left, y + high), at(left + wide * 4, y + high)),
        ...ends,
        text('scale', at(right, y + high + type.small + 0.9), scale.words, type.small, {
          anchor: 'end',
          tone: 'dimension',
        }),
      ]),
    ],
    left: left - 4,
  };
}

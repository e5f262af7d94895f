import { at, group, line, text } from '../scene/draw.js';
import type { Item, SheetPoint } from '../scene/scene.js';
import { textWidth } from '../text/font-metrics.js';
import { type } from './sizes.js';

const size = type.dimension;

/**
 * A dimension line between two points on the sheet, set off to one side, with witness lines and slanted ticks. The
 * words stand over the middle; where the piece is shorter than its words, they stand past its end.
 */
export function dimensionLine(
  key: string,
  from: SheetPoint,
  to: SheetPoint,
  words: string,
  off: number,
): Item {
  const flat = Math.abs(to.x - from.x) >= Math.abs(to.y - from.y);
  const wide = textWidth(words, size);
  if (flat) {
    const y = (off > 0 ? Math.max(from.y, to.y) : Math.min(from.y, to.y)) + off;
    const [left, right] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
    const fits = wide + 1 <= right - left;
    return group(key, [
      ...[from, to].map((p, i) => witness(`witness ${i}`, p, at(p.x, y))),
      line('line', 'dimension', at(left, y), at(right, y), { head: 'both ticks' }),
      ...(fits ? [] : [line('run', 'dimension', at(right, y), at(right + wide + 3, y))]),
      text('words', at(fits ? (left + right) / 2 : right + 2, y - 1), words, size, {
        anchor: fits ? 'middle' : 'start',
        tone: 'dimension',
        halo: true,
      }),
    ]);
  }
  const x = (off > 0 ? Math.max(from.x, to.x) : Math.min(from.x, to.x)) + off;
  const [top, bottom] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
  const fits = wide + 1 <= bottom - top;
  return group(key, [
    ...[from, to].map((p, i) => witness(`witness ${i}`, p, at(x, p.y))),
    line('line', 'dimension', at(x, top), at(x, bottom), { head: 'both ticks' }),
    fits
      ? text('words', at(x - 1, (top + bottom) / 2), words, size, {
          anchor: 'middle',
          turn: -90,
          tone: 'dimension',
          halo: true,
        })
      : text('words', at(off > 0 ? x + 1.6 : x - 1.6, (top + bottom) / 2 + size * 0.34), words, size, {
          anchor: off > 0 ? 'start' : 'end',
          tone: 'dimension',
          halo: true,
        }),
  ]);
}

const witness = (key: string, from: SheetPoint, to: SheetPoint): Item =>
  line(key, 'dimension', from, at(to.x + Math.sign(to.x - from.x) * 1, to.y + Math.sign(to.y - from.y) * 1), {
    width: 0.1,
  });

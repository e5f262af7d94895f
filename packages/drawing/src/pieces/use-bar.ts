import type { Figure } from '@cribwright/messages';
import { at, group, line, rectangle } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { useLevel } from './use-level.js';

/** A bar for a share of capacity, with a stroke at the limit. Past the frame it ends in an arrow. */
export function useBar(
  key: string,
  x: number,
  y: number,
  wide: number,
  high: number,
  use: Figure | undefined,
  limit: number,
): Item {
  const level = useLevel(use, limit);
  const share = use?.value?.high;
  const full = 1.25 * limit;
  const bar = share === undefined ? 0 : Math.min(Math.max(share, 0), full) / full;
  const mark = x + (wide * limit) / full;
  return group(key, [
    share === undefined
      ? rectangle('frame', 'warning', x, y, wide, high, 'none', { dash: 'dashed' })
      : rectangle('frame', 'faint', x, y, wide, high, 'none'),
    ...(bar > 0 ? [rectangle('bar', level.tone, x, y, wide * bar, high, level.fill, { width: 0.25 })] : []),
    line('limit', 'scale', at(mark, y - 0.8), at(mark, y + high + 0.8), { width: 0.4 }),
    ...(share !== undefined && share > full
      ? [
          line('beyond', level.tone, at(x + wide, y + high / 2), at(x + wide + 3, y + high / 2), {
            head: 'arrow',
          }),
        ]
      : []),
  ]);
}

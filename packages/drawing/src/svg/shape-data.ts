import type { Item, SheetPoint } from '../scene/scene.js';
import { smooth } from '../scene/smooth.js';
import { fixed } from './fixed.js';

/** A place as SVG writes it. */
export const pair = (p: SheetPoint): string => `${fixed(p.x)},${fixed(p.y)}`;

/** The data of a path: straight pieces, or a curve through its points. */
export function pathData(item: Extract<Item, { kind: 'path' }>): string {
  const [first, ...rest] = item.points;
  if (first === undefined) return '';
  const start = `M${pair(first)}`;
  const body = item.smooth
    ? smooth(item.points, item.closed)
        .map((curve) => `C${curve.map(pair).join(' ')}`)
        .join('')
    : rest.map((p) => `L${pair(p)}`).join('');
  return `${start}${body}${item.closed ? 'Z' : ''}`;
}

/** Length of a line's arrow head, mm; shorter on a short line. */
export const arrowLength = (item: Extract<Item, { kind: 'line' }>): number =>
  Math.min(2.6, Math.hypot(item.to.x - item.from.x, item.to.y - item.from.y) * 0.45);

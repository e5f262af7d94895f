import { capHeight, descent, textWidth } from '../text/font-metrics.js';
import type { Item, SheetPoint } from './scene.js';

/** An upright rectangle on the sheet, mm. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const overlaps = (a: Box, b: Box, gap = 0): boolean =>
  a.left < b.right + gap && b.left < a.right + gap && a.top < b.bottom + gap && b.top < a.bottom + gap;

export const within = (inner: Box, outer: Box, slack = 0): boolean =>
  inner.left >= outer.left - slack &&
  inner.top >= outer.top - slack &&
  inner.right <= outer.right + slack &&
  inner.bottom <= outer.bottom + slack;

export function around(points: readonly SheetPoint[], margin = 0): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return { left: left - margin, top: top - margin, right: right + margin, bottom: bottom + margin };
}

export const join = (a: Box, b: Box): Box => ({
  left: Math.min(a.left, b.left),
  top: Math.min(a.top, b.top),
  right: Math.max(a.right, b.right),
  bottom: Math.max(a.bottom, b.bottom),
});

type Text = Extract<Item, { kind: 'text' }>;

/** The room a text takes: from the top of its capitals to the bottom of its tails. */
export function textBox(text: Text): Box {
  const width = textWidth(text.text, text.size, text.weight);
  const before = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? width / 2 : width;
  const corners = [
    { x: -before, y: -text.size * capHeight },
    { x: width - before, y: text.size * descent },
  ];
  const turn = ((text.turn ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [a, c] = corners as [SheetPoint, SheetPoint];
  return around(
    [a, { x: c.x, y: a.y }, c, { x: a.x, y: c.y }].map((p) => ({
      x: text.at.x + p.x * cos - p.y * sin,
      y: text.at.y + p.x * sin + p.y * cos,
    })),
  );
}

/** The bounds of groups that were worked out before: a group that did not change is the same object. */
const groups = new WeakMap<Item, Box>();

function boundsOfGroup(group: Extract<Item, { kind: 'group' }>): Box {
  const known = groups.get(group);
  if (known !== undefined) return known;
  const box = group.items.map(boundsOf).reduce(join, around([]));
  groups.set(group, box);
  return box;
}

/** The room that an item takes, without the thickness of its lines. */
export function boundsOf(item: Item): Box {
  switch (item.kind) {
    case 'group':
      return boundsOfGroup(item);
    case 'line':
      return around([item.from, item.to]);
    case 'polygon':
    case 'path':
      return around(item.points);
    case 'circle':
      return around([item.center], item.radius);
    case 'text':
      return textBox(item);
  }
}

import type { Ref } from '@cribwright/engine';
import { type Box, overlaps, within } from '../scene/bounds.js';
import { at, group, line, text } from '../scene/draw.js';
import type { Item, Point, Tone } from '../scene/scene.js';
import { badge } from '../sheet/legend.js';
import { leading, type } from '../sheet/sizes.js';
import { capHeight, textWidth } from '../text/font-metrics.js';

/** Words that belong to a place in the drawing. */
export interface Label {
  readonly key: string;
  readonly at: Point;
  /** Half the size of what it names: the label keeps off it. */
  readonly clear: { readonly x: number; readonly y: number };
  /** The first line is bold. */
  readonly lines: readonly string[];
  readonly badge?: 'danger' | 'warning' | 'note' | undefined;
  readonly ref?: Ref;
  readonly tone?: Tone;
}

const size = type.label;
const step = size * leading;
const badgeRoom = 4.4;

/**
 * Puts labels near what they name so that no two overlap and none lies over `taken` or outside `area`. Shapes in
 * `avoid` may be covered, if there is no better place. A label that had to go further off gets a leader.
 */
export function placeLabels(
  labels: readonly Label[],
  around: {
    readonly area: Box;
    readonly taken: readonly Box[];
    readonly avoid: readonly Box[];
  },
): { readonly items: readonly Item[]; readonly unplaced: readonly Label[] } {
  const taken = [...around.taken];
  const unplaced: Label[] = [];
  const items = labels.flatMap((label) => {
    const room = roomOf(label);
    const spot = bestSpot(label, room, around.area, taken, around.avoid);
    if (spot === undefined) {
      unplaced.push(label);
      return [];
    }
    taken.push(spot);
    return [drawn(label, spot)];
  });
  return { items, unplaced };
}

const roomOf = (label: Label) => ({
  wide:
    Math.max(...label.lines.map((l, i) => textWidth(l, size, i === 0 ? 'bold' : 'normal'))) +
    (label.badge === undefined ? 0 : badgeRoom) +
    1,
  high: (label.lines.length - 1) * step + size + 0.6,
});

const ways = [
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
] as const;
const distances = [1, 3, 6, 10, 15, 21, 28, 36, 46, 60, 80, 110];

function bestSpot(
  label: Label,
  { wide, high }: { wide: number; high: number },
  area: Box,
  taken: readonly Box[],
  avoid: readonly Box[],
): Box | undefined {
  let best: { box: Box; cost: number } | undefined;
  for (const distance of distances) {
    if (best !== undefined && best.cost <= distance) break;
    for (const [wx, wy] of ways) {
      const x = label.at.x + wx * (label.clear.x + distance + wide / 2);
      const y = label.at.y + wy * (label.clear.y + distance + high / 2);
      const box = { left: x - wide / 2, right: x + wide / 2, top: y - high / 2, bottom: y + high / 2 };
      if (!within(box, area) || taken.some((t) => overlaps(t, box, 0.4))) continue;
      const covered = avoid.reduce((sum, a) => sum + shared(a, box), 0) / (wide * high);
      const crossed = distance < 4 ? 0 : taken.filter((t) => crosses(label.at, { x, y }, t)).length;
      const cost = distance + 12 * covered + 8 * crossed;
      if (best === undefined || cost < best.cost) best = { box, cost };
    }
  }
  return best?.box;
}

const shared = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

/** Whether the straight line between two points runs through a box. */
function crosses(a: Point, b: Point, box: Box): boolean {
  let [from, to] = [0, 1];
  for (const [start, run, low, high] of [
    [a.x, b.x - a.x, box.left, box.right],
    [a.y, b.y - a.y, box.top, box.bottom],
  ] as const) {
    if (Math.abs(run) < 1e-9) {
      if (start < low || start > high) return false;
      continue;
    }
    const [p, q] = [(low - start) / run, (high - start) / run];
    from = Math.max(from, Math.min(p, q));
    to = Math.min(to, Math.max(p, q));
  }
  return from < to;
}

function drawn(label: Label, box: Box): Item {
  const left = box.left + 0.5 + (label.badge === undefined ? 0 : badgeRoom);
  const lines = label.lines.map((words, i) =>
    text(`line ${i}`, at(left, box.top + 0.3 + size * capHeight + i * step), words, size, {
      weight: i === 0 ? 'bold' : 'normal',
      halo: true,
      ...(label.tone === undefined ? {} : { tone: label.tone }),
    }),
  );
  const sign =
    label.badge === undefined
      ? []
      : badge('badge', label.badge, box.left + 2.1, box.top + 0.3 + size * 0.36, 3.6);
  return group(`label ${label.key}`, [...leader(label, box), ...sign, ...lines], { ref: label.ref });
}

function leader(label: Label, box: Box): readonly Item[] {
  const edge = at(
    Math.min(Math.max(label.at.x, box.left), box.right),
    Math.min(Math.max(label.at.y, box.top), box.bottom),
  );
  const gap = Math.max(
    Math.abs(edge.x - label.at.x) - label.clear.x,
    Math.abs(edge.y - label.at.y) - label.clear.y,
  );
  if (gap < 4) return [];
  return [line('leader', 'dimension', edge, label.at, { width: 0.12 })];
}

import type { Ref } from '@cribwright/engine';
import { around as aroundPoints, type Box, overlaps, within } from '../scene/bounds.js';
import { at, group, line, rectangle, text } from '../scene/draw.js';
import type { Item, Point, Tone } from '../scene/scene.js';
import { badge } from '../sheet/legend.js';
import { leading, type } from '../sheet/sizes.js';
import { capHeight, textWidth } from '../text/font-metrics.js';
import { BoxIndex } from './box-index.js';

/** Words that belong to a place in the drawing. */
export interface Label {
  readonly key: string;
  readonly at: Point;
  /** Half the size of what it names: the label keeps off it. */
  readonly clear: { readonly x: number; readonly y: number };
  /** In bold, on the first line. */
  readonly name: string;
  /** On the same line, after the name. */
  readonly beside?: string | undefined;
  /** Under it. */
  readonly lines: readonly string[];
  readonly badge?: 'danger' | 'warning' | 'note' | undefined;
  readonly ref?: Ref;
  readonly tone?: Tone;
  /** The label belongs inside this, as a body's name does: anywhere in it, near its middle by choice. */
  readonly inside?: Box;
}

/** What labels keep off, harder or less hard. */
export interface Surroundings {
  readonly area: Box;
  /** Never covered: other words, signs. */
  readonly taken: readonly Box[];
  /** What labels name: another's shape is covered only if there is no other place. */
  readonly shapes: readonly Box[];
  /** Leaders and dimension lines: better not crossed. */
  readonly lines: readonly Box[];
  /** Bodies: what a label over one of them costs, in mm of distance. */
  readonly bodies: readonly Box[];
  readonly bodyCost: number;
}

const size = type.label;
const step = size * leading;
const badgeRoom = 4.4;

/**
 * Puts labels near what they name so that no two overlap and none lies over `taken` or outside `area`. A label
 * that had to go further off gets a leader.
 */
export function placeLabels(
  labels: readonly Label[],
  around: Surroundings,
): { readonly items: readonly Item[]; readonly unplaced: readonly Label[] } {
  const index = {
    taken: new BoxIndex(around.taken),
    shapes: new BoxIndex(around.shapes),
    lines: new BoxIndex(around.lines),
    leaders: new BoxIndex(),
    ends: new Map<Box, readonly [Point, Point]>(),
  };
  const unplaced: Label[] = [];
  const ordered = [...labels].sort((a, b) => turn(a) - turn(b));
  const items = ordered.flatMap((label) => {
    const spot = bestSpot(label, roomOf(label), around, index);
    if (spot === undefined) {
      unplaced.push(label);
      return [];
    }
    index.taken.add(spot);
    const leader = leaderOf(label, spot);
    if (leader !== undefined) {
      const box = aroundPoints(leader);
      index.leaders.add(box);
      index.ends.set(box, leader);
    }
    return [drawn(label, spot, leader)];
  });
  return { items, unplaced };
}

interface Index {
  readonly taken: BoxIndex;
  readonly shapes: BoxIndex;
  readonly lines: BoxIndex;
  /** Boxes round the leaders drawn so far, and their ends. */
  readonly leaders: BoxIndex;
  readonly ends: Map<Box, readonly [Point, Point]>;
}

/** A small body's name goes first, a large body has room for its own whatever comes. */
const turn = ({ inside }: Label): number =>
  inside === undefined ? 1 : inside.right - inside.left < 50 ? 0 : 2;

const gap = 1.3;

const firstLine = ({ name, beside }: Label): number =>
  textWidth(name, size, 'bold') + (beside === undefined ? 0 : gap + textWidth(beside, size));

const roomOf = (label: Label) => ({
  wide:
    Math.max(firstLine(label), ...label.lines.map((l) => textWidth(l, size))) +
    (label.badge === undefined ? 0 : badgeRoom) +
    1,
  high: label.lines.length * step + size + 0.6,
});

const ways = [
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
  [0.5, -1],
  [-0.5, -1],
  [0.5, 1],
  [-0.5, 1],
  [1, 0.5],
  [-1, 0.5],
  [1, -0.5],
  [-1, -0.5],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
] as const;
const distances = [1, 2.5, 4.5, 7, 10, 14, 18, 23, 29, 36, 44, 54, 66, 80, 100, 130];

function bestSpot(
  label: Label,
  room: { readonly wide: number; readonly high: number },
  around: Surroundings,
  index: Index,
): Box | undefined {
  const own = {
    left: label.at.x - label.clear.x - 0.5,
    right: label.at.x + label.clear.x + 0.5,
    top: label.at.y - label.clear.y - 0.5,
    bottom: label.at.y + label.clear.y + 0.5,
  };
  const foreign = (box: Box) => label.inside !== undefined || !within(box, own);
  let best: { box: Box; cost: number } | undefined;
  for (const { box, distance } of candidates(label, room)) {
    if (best !== undefined && best.cost <= distance) {
      if (label.inside === undefined) break;
      continue;
    }
    if (!within(box, around.area) || index.taken.touches(box, 0.5)) continue;
    if (index.leaders.touching(box).some((l) => crossesEnds(index.ends.get(l), box))) continue;
    const leader = leaderOf(label, box);
    const part = (boxes: readonly Box[]) =>
      boxes.reduce((sum, b) => sum + shared(b, box), 0) / (room.wide * room.high);
    const covered = index.shapes.touching(box, 0.6).filter(foreign);
    const plain =
      distance * (leader === undefined ? 1 : 1.25) +
      (covered.length > 0 ? 90 + 60 * part(covered) : 0) +
      7 * index.lines.touching(box).length +
      (label.inside === undefined ? around.bodyCost * Math.min(1, part(around.bodies)) : 0);
    if (best !== undefined && plain >= best.cost) continue;
    const cost =
      plain +
      (leader === undefined
        ? 0
        : crossingCost(leader, index, foreign) + (around.bodyCost / 26) * overBodies(leader, around.bodies));
    if (best === undefined || cost < best.cost) best = { box, cost };
  }
  return best?.box;
}

/** What a leader costs that runs over words or over the shapes of others. */
function crossingCost(leader: readonly [Point, Point], index: Index, foreign: (box: Box) => boolean): number {
  const near = aroundPoints(leader);
  const words = index.taken.touching(near).filter((t) => crosses(...leader, t)).length;
  const shapes = index.shapes.touching(near).filter((o) => foreign(o) && crosses(...leader, o)).length;
  return 25 * words + 6 * shapes;
}

/** How far a leader runs over bodies, mm: one that crosses a whole vehicle leads astray. */
const overBodies = ([a, b]: readonly [Point, Point], bodies: readonly Box[]): number =>
  Math.hypot(b.x - a.x, b.y - a.y) * Math.max(0, ...bodies.map((body) => shareInside(a, b, body)));

const crossesEnds = (ends: readonly [Point, Point] | undefined, box: Box): boolean =>
  ends !== undefined && crosses(...ends, box);

function* candidates(
  label: Label,
  { wide, high }: { readonly wide: number; readonly high: number },
): Generator<{ readonly box: Box; readonly distance: number }> {
  const boxAt = (x: number, y: number): Box => ({
    left: x - wide / 2,
    right: x + wide / 2,
    top: y - high / 2,
    bottom: y + high / 2,
  });
  const { inside } = label;
  if (inside !== undefined) {
    const steps = [0.5, 0.375, 0.625, 0.25, 0.75, 0.125, 0.875, 0, 1];
    for (const across of steps) {
      for (const down of steps) {
        const x = inside.left + wide / 2 + 1 + across * Math.max(0, inside.right - inside.left - wide - 2);
        const y = inside.top + high / 2 + 1 + down * Math.max(0, inside.bottom - inside.top - high - 2);
        yield { box: boxAt(x, y), distance: Math.hypot(x - label.at.x, y - label.at.y) / 3 };
      }
    }
  }
  for (const distance of distances) {
    for (const [wx, wy] of ways) {
      yield {
        box: boxAt(
          label.at.x + wx * (label.clear.x + distance + wide / 2),
          label.at.y + wy * (label.clear.y + distance + high / 2),
        ),
        distance: inside === undefined ? distance : distance + 30,
      };
    }
  }
}

const shared = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

/** Whether the straight line between two points runs through a box. */
const crosses = (a: Point, b: Point, box: Box): boolean => shareInside(a, b, box) > 0;

/** The part of the straight line between two points that lies in a box, 0 to 1. */
function shareInside(a: Point, b: Point, box: Box): number {
  let [from, to] = [0, 1];
  for (const [start, run, low, high] of [
    [a.x, b.x - a.x, box.left, box.right],
    [a.y, b.y - a.y, box.top, box.bottom],
  ] as const) {
    if (Math.abs(run) < 1e-9) {
      if (start < low || start > high) return 0;
      continue;
    }
    const [p, q] = [(low - start) / run, (high - start) / run];
    from = Math.max(from, Math.min(p, q));
    to = Math.min(to, Math.max(p, q));
  }
  return Math.max(0, to - from);
}

function drawn(label: Label, box: Box, leader: readonly [Point, Point] | undefined): Item {
  const left = box.left + 0.5 + (label.badge === undefined ? 0 : badgeRoom);
  const base = box.top + 0.3 + size * capHeight;
  const tone = label.tone === undefined ? {} : { tone: label.tone };
  const lines = [
    text('name', at(left, base), label.name, size, { weight: 'bold', ...tone }),
    ...(label.beside === undefined
      ? []
      : [
          text(
            'beside',
            at(left + textWidth(label.name, size, 'bold') + gap, base),
            label.beside,
            size,
            tone,
          ),
        ]),
    ...label.lines.map((words, i) => text(`line ${i}`, at(left, base + (i + 1) * step), words, size, tone)),
  ];
  const sign =
    label.badge === undefined
      ? []
      : badge('badge', label.badge, box.left + 2.1, box.top + 0.3 + size * 0.36, 3.6);
  const [wide, high] = [box.right - box.left, box.bottom - box.top];
  return group(
    `label ${label.key}`,
    [
      ...(leader === undefined ? [] : [line('leader', 'dimension', ...leader, { width: 0.15 })]),
      // A plate of paper, so that nothing under the words makes them hard to read.
      rectangle('plate', 'scale', box.left, box.top - 0.2, wide, high + 0.2, 'light', { width: 0 }),
      ...sign,
      ...lines,
    ],
    { ref: label.ref },
  );
}

/** From the label's edge to the edge of what it names; none where they are close by. */
function leaderOf(label: Label, box: Box): readonly [Point, Point] | undefined {
  if (label.inside !== undefined && overlaps(label.inside, box)) return undefined;
  const clamp = (v: number, low: number, high: number) => Math.min(Math.max(v, low), high);
  const target = at(
    clamp((box.left + box.right) / 2, label.at.x - label.clear.x, label.at.x + label.clear.x),
    clamp((box.top + box.bottom) / 2, label.at.y - label.clear.y, label.at.y + label.clear.y),
  );
  const edge = at(clamp(target.x, box.left, box.right), clamp(target.y, box.top, box.bottom));
  return Math.hypot(edge.x - target.x, edge.y - target.y) < 3.2 ? undefined : [edge, target];
}

import { around as aroundPoints, type Box, within } from '../scene/bounds.js';
import type { BoxIndex } from './box-index.js';
import { type Label, roomOf } from './label.js';
import { crosses, type Leader, leaderOf, shareInside } from './leader.js';

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

/** The same, filed by place, and the leaders drawn so far. */
export interface Filed {
  readonly taken: BoxIndex;
  readonly shapes: BoxIndex;
  readonly lines: BoxIndex;
  /** Boxes round the leaders, and their ends. */
  readonly leaders: BoxIndex;
  readonly ends: Map<Box, Leader>;
}

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
const shares = [0.5, 0.375, 0.625, 0.25, 0.75, 0.125, 0.875, 0, 1];

/**
 * The cheapest place for a label: near what it names, inside the area, off what is taken, and as far as can be off
 * shapes, lines, leaders and bodies. `undefined` where there is none.
 */
export function bestSpot(label: Label, around: Surroundings, filed: Filed): Box | undefined {
  const { wide, high } = roomOf(label);
  const { at, clear, inside } = label;
  let best: { readonly box: Box; readonly cost: number } | undefined;
  /** Looks at the place whose middle is at x, y. No place at that distance can cost less than `distance`. */
  const look = (x: number, y: number, distance: number): void => {
    if (best !== undefined && best.cost <= distance) return;
    const box = { left: x - wide / 2, right: x + wide / 2, top: y - high / 2, bottom: y + high / 2 };
    const cost = costOf(label, box, wide * high, distance, best?.cost ?? Infinity, around, filed);
    if (cost !== undefined && (best === undefined || cost < best.cost)) best = { box, cost };
  };
  if (inside !== undefined) {
    const [across, down] = [inside.right - inside.left - wide - 2, inside.bottom - inside.top - high - 2];
    for (const right of shares) {
      for (const below of shares) {
        const x = inside.left + wide / 2 + 1 + right * Math.max(0, across);
        const y = inside.top + high / 2 + 1 + below * Math.max(0, down);
        look(x, y, Math.hypot(x - at.x, y - at.y) / 3);
      }
    }
  }
  for (const distance of distances) {
    const least = inside === undefined ? distance : distance + 30;
    if (best !== undefined && best.cost <= least) break;
    const [right, below] = [clear.x + distance + wide / 2, clear.y + distance + high / 2];
    for (const [wx, wy] of ways) look(at.x + wx * right, at.y + wy * below, least);
  }
  return best?.box;
}

/** What a place costs, mm; `undefined` where it may not be, or costs `most` or more in any case. */
function costOf(
  label: Label,
  box: Box,
  room: number,
  distance: number,
  most: number,
  around: Surroundings,
  filed: Filed,
): number | undefined {
  if (!within(box, around.area) || filed.taken.touches(box, 0.5)) return undefined;
  for (const near of filed.leaders.touching(box)) {
    const ends = filed.ends.get(near);
    if (ends !== undefined && crosses(...ends, box)) return undefined;
  }
  const leader = leaderOf(label, box);
  const away = distance * (leader === undefined ? 1 : 1.25);
  if (away >= most) return undefined;
  const covered = filed.shapes.touching(box, 0.6).filter((shape) => foreign(label, shape));
  const plain =
    away +
    (covered.length > 0 ? 250 + 60 * (sharedWith(covered, box) / room) : 0) +
    7 * filed.lines.touching(box).length +
    (label.inside === undefined ? around.bodyCost * Math.min(1, sharedWith(around.bodies, box) / room) : 0);
  if (plain >= most || leader === undefined) return plain >= most ? undefined : plain;
  return (
    plain + crossingCost(leader, label, filed) + (around.bodyCost / 16) * overBodies(leader, around.bodies)
  );
}

/** Whether a shape is another's, and not part of what the label names. */
const foreign = ({ at, clear, inside }: Label, { left, top, right, bottom }: Box): boolean =>
  inside !== undefined ||
  left < at.x - clear.x - 0.5 ||
  right > at.x + clear.x + 0.5 ||
  top < at.y - clear.y - 0.5 ||
  bottom > at.y + clear.y + 0.5;

/** What a leader costs that runs over words, which it would seem to strike out, or over the shapes of others. */
function crossingCost(leader: Leader, label: Label, filed: Filed): number {
  const near = aroundPoints(leader);
  const words = filed.taken.touching(near).filter((t) => crosses(...leader, t)).length;
  const shapes = filed.shapes.touching(near).filter((s) => foreign(label, s) && crosses(...leader, s)).length;
  return 25 * words + 6 * shapes;
}

/** How far a leader runs over bodies, mm: one that crosses a whole vehicle leads astray. */
function overBodies([a, b]: Leader, bodies: readonly Box[]): number {
  let share = 0;
  for (const body of bodies) share = Math.max(share, shareInside(a, b, body));
  return Math.hypot(b.x - a.x, b.y - a.y) * share;
}

/** The room that a box shares with others, mm². */
function sharedWith(boxes: readonly Box[], own: Box): number {
  let sum = 0;
  for (const { left, top, right, bottom } of boxes) {
    const across = Math.min(right, own.right) - Math.max(left, own.left);
    const down = Math.min(bottom, own.bottom) - Math.max(top, own.top);
    if (across > 0 && down > 0) sum += across * down;
  }
  return sum;
}

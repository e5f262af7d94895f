import { type Box, overlaps } from '../scene/bounds.js';
import type { SheetPoint } from '../scene/scene.js';
import type { Label } from './label.js';

/** From a label's edge to the edge of what it names. */
export type Leader = readonly [SheetPoint, SheetPoint];

/** Nearer than this a label needs no leader, mm. */
const closeBy = 3.2;

/** The leader of a label that would stand in a box; none where they are close by. */
export function leaderOf({ at, clear, inside }: Label, box: Box): Leader | undefined {
  if (inside !== undefined && overlaps(inside, box)) return undefined;
  const x = clamp((box.left + box.right) / 2, at.x - clear.x, at.x + clear.x);
  const y = clamp((box.top + box.bottom) / 2, at.y - clear.y, at.y + clear.y);
  const edge = { x: clamp(x, box.left, box.right), y: clamp(y, box.top, box.bottom) };
  return Math.hypot(edge.x - x, edge.y - y) < closeBy ? undefined : [edge, { x, y }];
}

const clamp = (v: number, low: number, high: number): number => Math.min(Math.max(v, low), high);

/** Whether the straight line between two points runs through a box. */
export const crosses = (a: SheetPoint, b: SheetPoint, box: Box): boolean => shareInside(a, b, box) > 0;

/** The part of the straight line between two points that lies in a box, 0 to 1. */
export function shareInside(a: SheetPoint, b: SheetPoint, { left, top, right, bottom }: Box): number {
  let [from, to] = [0, 1];
  const [across, down] = [b.x - a.x, b.y - a.y];
  if (Math.abs(across) >= level) {
    const [p, q] = [(left - a.x) / across, (right - a.x) / across];
    from = Math.max(from, Math.min(p, q));
    to = Math.min(to, Math.max(p, q));
  } else if (a.x < left || a.x > right) return 0;
  if (Math.abs(down) >= level) {
    const [p, q] = [(top - a.y) / down, (bottom - a.y) / down];
    from = Math.max(from, Math.min(p, q));
    to = Math.min(to, Math.max(p, q));
  } else if (a.y < top || a.y > bottom) return 0;
  return Math.max(0, to - from);
}

/** A run shorter than this counts as none, mm. */
const level = 1e-9;

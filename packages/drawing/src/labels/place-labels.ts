import { around as aroundPoints, type Box } from '../scene/bounds.js';
import type { Item } from '../scene/scene.js';
import { bestSpot, type Surroundings } from './best-spot.js';
import { BoxIndex } from './box-index.js';
import { drawLabel, drawLeader } from './draw-label.js';
import type { Label } from './label.js';
import { type Leader, leaderOf } from './leader.js';

/**
 * Puts labels near what they name so that no two overlap and none lies over `taken` or outside `area`. A label
 * that had to go further off gets a leader.
 */
export function placeLabels(
  labels: readonly Label[],
  around: Surroundings,
): { readonly items: readonly Item[]; readonly unplaced: readonly Label[] } {
  const filed = {
    taken: new BoxIndex(around.taken),
    shapes: new BoxIndex(around.shapes),
    lines: new BoxIndex(around.lines),
    leaders: new BoxIndex(),
    ends: new Map<Box, Leader>(),
  };
  const unplaced: Label[] = [];
  const ordered = [...labels].sort((a, b) => turn(a) - turn(b));
  const leaders: Item[] = [];
  const items = ordered.flatMap((label) => {
    const spot = bestSpot(label, around, filed);
    if (spot === undefined) {
      unplaced.push(label);
      return [];
    }
    filed.taken.add(spot);
    const leader = leaderOf(label, spot);
    if (leader !== undefined) {
      const box = aroundPoints(leader);
      filed.leaders.add(box);
      filed.ends.set(box, leader);
      leaders.push(drawLeader(label, leader));
    }
    return [drawLabel(label, spot)];
  });
  return { items: [...leaders, ...items], unplaced };
}

/** A small body's name goes first, a large body has room for its own whatever comes. */
const turn = ({ inside }: Label): number =>
  inside === undefined ? 1 : inside.right - inside.left < 50 ? 0 : 2;

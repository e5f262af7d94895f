import { type Box, boundsOf } from '../scene/bounds.js';
import type { Item } from '../scene/scene.js';
import { foundIn, textBoxes, walk } from '../scene/walk.js';
import type { ThingKind } from '../space/thing.js';
import { thingKinds } from '../space/thing-kinds.js';

/** Thin lines of measures and leaders, as boxes that labels had better not cross. */
export const thinLines: (items: readonly Item[]) => readonly Box[] = foundIn((item) =>
  item.kind === 'line' && item.tone === 'dimension' && item.dash === undefined ? straight(item) : [],
);

/**
 * The room that an element's shape takes, in pieces: one box where it is compact, one for each piece of a strut,
 * a strap or a pair of chocks, which enclose a lot that is free.
 */
export function shapeBoxes(item: Item, kind: ThingKind): readonly Box[] {
  if (thingKinds[kind].room === 'one box') return [boundsOf(item)];
  return [...walk([item])].flatMap((i) =>
    i.kind === 'group' ? [] : i.kind === 'line' ? straight(i) : [boundsOf(i)],
  );
}

/** A slanted line as a row of small boxes, an upright or level one as it is. */
function straight({ from, to }: Extract<Item, { kind: 'line' }>): readonly Box[] {
  const pieces =
    from.x === to.x || from.y === to.y ? 1 : Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 3);
  return Array.from({ length: pieces }, (_, i) => {
    const place = (t: number) => ({ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t });
    return boundsOf({
      kind: 'polygon',
      key: '',
      tone: 'dimension',
      fill: 'none',
      points: [place(i / pieces), place((i + 1) / pieces)],
    });
  });
}

export { textBoxes };

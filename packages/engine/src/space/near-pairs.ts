import type { Outline } from '@cribwright/model';
import { farthest } from './polygon.js';

/**
 * Which outlines may overlap: pairs of places in the list, the lesser first, in order. Those whose upright
 * rectangles lie apart are left out, without a look at each pair: a line sweeps from front to rear, and only what
 * it crosses at the same time is compared.
 */
export function nearPairs(outlines: readonly Outline[]): readonly (readonly [number, number])[] {
  const boxes = outlines.map((o, i) => ({
    i,
    front: -farthest(o, -1, 0),
    rear: farthest(o, 1, 0),
    left: -farthest(o, 0, -1),
    right: farthest(o, 0, 1),
  }));
  const pairs: (readonly [number, number])[] = [];
  let crossed: typeof boxes = [];
  for (const box of boxes.sort((a, b) => a.front - b.front)) {
    crossed = crossed.filter((other) => other.rear > box.front);
    for (const other of crossed)
      if (other.right > box.left && box.right > other.left)
        pairs.push([Math.min(other.i, box.i), Math.max(other.i, box.i)]);
    crossed.push(box);
  }
  return pairs.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

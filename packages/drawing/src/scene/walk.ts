import { type Box, textBox } from './bounds.js';
import type { Item } from './scene.js';

/** Every item of a drawing, groups first and then what they hold. */
export function* walk(items: readonly Item[]): Generator<Item> {
  for (const item of items) {
    yield item;
    if (item.kind === 'group') yield* walk(item.items);
  }
}

/** What is found in each top item of a drawing, one after the other; in a group that did not change, once. */
export function foundIn<Found>(
  find: (item: Item) => readonly Found[],
): (items: readonly Item[]) => readonly Found[] {
  const known = new WeakMap<Item, readonly Found[]>();
  return (items) =>
    items.flatMap((item) => {
      const before = known.get(item);
      if (before !== undefined) return before;
      const found = [...walk([item])].flatMap(find);
      if (item.kind === 'group') known.set(item, found);
      return found;
    });
}

/** The room that each text of a drawing takes. */
export const textBoxes: (items: readonly Item[]) => readonly Box[] = foundIn((item) =>
  item.kind === 'text' ? [textBox(item)] : [],
);

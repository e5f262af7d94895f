import { type Box, textBox } from './bounds.js';
import type { Item } from './scene.js';

/** Every item of a drawing, groups first and then what they hold. */
export function* walk(items: readonly Item[]): Generator<Item> {
  for (const item of items) {
    yield item;
    if (item.kind === 'group') yield* walk(item.items);
  }
}

/** The room that each text of a drawing takes. */
export const textBoxes = (items: readonly Item[]): readonly Box[] =>
  [...walk(items)].flatMap((item) => (item.kind === 'text' ? [textBox(item)] : []));

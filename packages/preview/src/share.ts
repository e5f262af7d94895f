import type { Item, Scene } from '@cribwright/drawing/page';

/**
 * The new drawing, made of the old one's objects wherever they say the same. Messages are copies, so without this
 * nothing would be the same object as before, and all would be drawn again.
 */
export function shared(before: Scene | undefined, now: Scene): Scene {
  if (before === undefined || before.choice.view !== now.choice.view) return now;
  return { ...now, items: sharedItems(before.items, now.items) };
}

function sharedItems(before: readonly Item[], now: readonly Item[]): readonly Item[] {
  const old = new Map(before.map((item) => [item.key, item]));
  const items = now.map((item) => {
    const was = old.get(item.key);
    return was === undefined ? item : sharedItem(was, item);
  });
  return before.length === now.length && items.every((item, i) => item === before[i]) ? before : items;
}

function sharedItem(was: Item, now: Item): Item {
  if (was.kind !== 'group' || now.kind !== 'group') return same(was, now) ? was : now;
  const items = sharedItems(was.items, now.items);
  const { items: _old, ...wasHead } = was;
  const { items: _new, ...nowHead } = now;
  return items === was.items && same(wasHead, nowHead) ? was : { ...now, items };
}

/** Whether two plain values say the same. */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const [left, right] = [Object.entries(a), Object.entries(b)];
  const other = new Map(right);
  return (
    left.length === right.length &&
    left.every(([key, value]) => other.has(key) && same(value, other.get(key)))
  );
}

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
  return items === was.items && same({ ...was, items }, { ...now, items }) ? was : { ...now, items };
}

/** Whether two plain values say the same. */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (!isHolder(a) || !isHolder(b) || Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  for (const key of keys) if (!Object.hasOwn(b, key) || !same(a[key], b[key])) return false;
  return true;
}

const isHolder = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

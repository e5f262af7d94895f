import type { Item, Scene, SpaceScene } from '../scene/scene.js';
import { alike } from './alike.js';

type Group = Extract<Item, { kind: 'group' }>;
type SpaceThing = SpaceScene['things'][number];

/** Stands in a drawing that is sent for a part that is as it was in the drawing sent before. */
export interface Kept<Told> {
  readonly kind: 'kept';
  /** Of a top item its key, of a thing in space its element. */
  readonly key: string;
  /** Where only its shapes are as they were: all else of it. */
  readonly told?: Told;
}

type SentItem = Item | Kept<Omit<Group, 'items' | 'drag'>>;
type SentThing = SpaceThing | Kept<Omit<SpaceThing, 'solids'>>;

/** A drawing as it is sent: parts that did not change are left out. */
export type SentScene = Omit<Scene, 'items' | 'space'> & {
  readonly items: readonly SentItem[];
  readonly space?: { readonly things: readonly SentThing[] };
};

/**
 * What is to be sent of a drawing to a reader who has the one before.
 *
 * @returns the drawing, made of the last one's objects where they say the same, and what is left of it to be sent
 */
export function leaveOut(
  before: Scene | undefined,
  now: Scene,
): { readonly scene: Scene; readonly sent: SentScene } {
  if (before === undefined || before.choice.view !== now.choice.view) return { scene: now, sent: now };
  const items = alike(before.items, now.items);
  const old = byKey(before.items);
  const scene = { ...now, items };
  const sent = { ...scene, items: items.map((item) => itemLeft(old.get(item.key), item)) };
  if (now.space === undefined) return { scene, sent };
  const placed = byElement(before.space?.things ?? []);
  const things = now.space.things.map((t) => alike(placed.get(t.ref.element), t));
  return {
    scene: { ...scene, space: alike(before.space, { things }) },
    sent: { ...sent, space: { things: things.map((t) => thingLeft(placed.get(t.ref.element), t)) } },
  };
}

function itemLeft(before: Item | undefined, now: Item): SentItem {
  if (before === now) return { kind: 'kept', key: now.key };
  if (before?.kind !== 'group' || now.kind !== 'group') return now;
  const { items, drag, ...told } = now;
  return before.items === items && before.drag === drag ? { kind: 'kept', key: now.key, told } : now;
}

function thingLeft(before: SpaceThing | undefined, now: SpaceThing): SentThing {
  if (before === now) return { kind: 'kept', key: now.ref.element };
  const { solids, ...told } = now;
  return before?.solids === solids ? { kind: 'kept', key: now.ref.element, told } : now;
}

/**
 * The whole drawing again, made of the last one's objects where they say the same.
 *
 * @returns `undefined` where something was left out that is not in the drawing before
 */
export function putBack(before: Scene | undefined, sent: SentScene): Scene | undefined {
  const same = before?.choice.view === sent.choice.view ? before : undefined;
  const old = byKey(same?.items ?? []);
  const items = sent.items.map((item) => (item.kind === 'kept' ? itemBack(old.get(item.key), item) : item));
  const placed = byElement(same?.space?.things ?? []);
  const things = sent.space?.things.map((t) => ('kind' in t ? thingBack(placed.get(t.key), t) : t));
  if (!all(items) || (things !== undefined && !all(things))) return undefined;
  const { space: _left, ...rest } = sent;
  return {
    ...rest,
    items: alike(same?.items, items),
    ...(things === undefined ? {} : { space: alike(same?.space, { things }) }),
  };
}

function itemBack(before: Item | undefined, { told }: Extract<SentItem, { kind: 'kept' }>): Item | undefined {
  if (before === undefined || told === undefined) return before;
  if (before.kind !== 'group') return undefined;
  const { items, drag } = before;
  return { ...told, items, ...(drag === undefined ? {} : { drag }) };
}

const thingBack = (
  before: SpaceThing | undefined,
  { told }: Extract<SentThing, { kind: 'kept' }>,
): SpaceThing | undefined =>
  before === undefined || told === undefined ? before : { ...told, solids: before.solids };

const byKey = (items: readonly Item[]): ReadonlyMap<string, Item> =>
  new Map(items.map((item) => [item.key, item]));

const byElement = (things: readonly SpaceThing[]): ReadonlyMap<string, SpaceThing> =>
  new Map(things.map((thing) => [thing.ref.element, thing]));

const all = <Part>(parts: readonly (Part | undefined)[]): parts is readonly Part[] =>
  parts.every((part) => part !== undefined);

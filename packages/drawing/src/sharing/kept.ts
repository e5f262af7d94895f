import type { Item, Scene, SpaceScene } from '../scene/scene.js';
import { alike } from './alike.js';

type SpaceThing = SpaceScene['things'][number];

/** Stands in a drawing that is sent for a part that is as it was in the drawing sent before. */
export interface Kept {
  readonly kind: 'kept';
  /** Of a top item its key, of a thing in space its element. */
  readonly key: string;
}

/** A drawing as it is sent: parts that did not change are left out. */
export type SentScene = Omit<Scene, 'items' | 'space'> & {
  readonly items: readonly (Item | Kept)[];
  readonly space?: { readonly things: readonly (SpaceThing | Kept)[] };
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
  const scene = { ...now, items: alike(before.items, now.items), ...inSpace(before, now) };
  const items = new Set<unknown>(before.items);
  const things = new Set<unknown>(before.space?.things);
  return {
    scene,
    sent: {
      ...scene,
      items: scene.items.map((item) => (items.has(item) ? kept(item.key) : item)),
      ...(scene.space === undefined
        ? {}
        : {
            space: {
              things: scene.space.things.map((t) => (things.has(t) ? kept(t.ref.element) : t)),
            },
          }),
    },
  };
}

function inSpace(before: Scene, now: Scene): Pick<Scene, 'space'> {
  if (now.space === undefined) return {};
  const old = new Map(before.space?.things.map((t) => [t.ref.element, t]));
  const things = now.space.things.map((t) => alike(old.get(t.ref.element), t));
  return { space: alike(before.space, { things }) };
}

const kept = (key: string): Kept => ({ kind: 'kept', key });

/**
 * The whole drawing again, made of the last one's objects where they say the same.
 *
 * @returns `undefined` where something was left out that is not in the drawing before
 */
export function putBack(before: Scene | undefined, sent: SentScene): Scene | undefined {
  const same = before?.choice.view === sent.choice.view ? before : undefined;
  const items = filled(sent.items, same?.items ?? [], (item) => item.key);
  const things = filled(sent.space?.things ?? [], same?.space?.things ?? [], (t) => t.ref.element);
  if (items === undefined || things === undefined) return undefined;
  const { space, ...rest } = sent;
  return {
    ...rest,
    items: alike(same?.items, items),
    ...(space === undefined ? {} : { space: alike(same?.space, { things }) }),
  };
}

function filled<Part extends Item | SpaceThing>(
  sent: readonly (Part | Kept)[],
  before: readonly Part[],
  keyOf: (part: Part) => string,
): readonly Part[] | undefined {
  const old = new Map(before.map((part) => [keyOf(part), part]));
  const whole: Part[] = [];
  for (const part of sent) {
    const own = isKept(part) ? old.get(part.key) : part;
    if (own === undefined) return undefined;
    whole.push(own);
  }
  return whole;
}

const isKept = (part: Item | SpaceThing | Kept): part is Kept => 'kind' in part && part.kind === 'kept';

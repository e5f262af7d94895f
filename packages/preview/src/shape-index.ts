import { type Drag, type Item, type Scene, walk } from '@cribwright/drawing/page';

/** What can be dragged in a drawing, by element. */
export function dragsOf(scene: Scene): ReadonlyMap<string, Drag> {
  const found = new Map<string, Drag>();
  for (const item of walk(scene.items)) {
    if (item.kind === 'group' && item.drag !== undefined) found.set(item.drag.element, item.drag);
  }
  return found;
}

/** The name of an element's shape, as it is spoken. */
export const nameIn = (scene: Scene, element: string): string | undefined => {
  for (const item of walk(scene.items)) {
    if (item.kind === 'group' && item.ref?.element === element && item.name !== undefined) return item.name;
  }
  return undefined;
};

export type Group = Extract<Item, { kind: 'group' }>;

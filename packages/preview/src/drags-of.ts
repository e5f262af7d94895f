import { type Drag, type Scene, walk } from '@cribwright/drawing/page';

/** What can be dragged in a drawing, by element. */
export function dragsOf(scene: Scene): ReadonlyMap<string, Drag> {
  const found = new Map<string, Drag>();
  for (const item of walk(scene.items)) {
    if (item.kind === 'group' && item.drag !== undefined) found.set(item.drag.element, item.drag);
  }
  return found;
}

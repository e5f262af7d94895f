import type { Analysis } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';
import type { Item, Scene, ViewChoice } from '../scene/scene.js';
import { walk } from '../scene/walk.js';
import { drawScene, firstChoice } from '../scenes/draw-scene.js';

type Group = Extract<Item, { kind: 'group' }>;

/** A drawing with short ways to ask what is in it. For tests. */
export function drawn(plan: Plan, analysis: Analysis, choice: Partial<ViewChoice>) {
  const scene: Scene = drawScene(plan, analysis, { ...firstChoice, ...choice });
  const groups = [...walk(scene.items)].filter((i): i is Group => i.kind === 'group');
  const group = (key: string): Group => {
    const found = groups.find((g) => g.key === key);
    if (found === undefined) throw new Error(`no group ${key} among ${groups.map((g) => g.key).join(', ')}`);
    return found;
  };
  const words = (key?: string): readonly string[] =>
    [...walk(key === undefined ? scene.items : [group(key)])].flatMap((i) =>
      i.kind === 'text' ? [i.text] : [],
    );
  const shape = (key: string, part: string): Item => {
    const found = [...walk([group(key)])].find((i) => i.kind !== 'group' && i.key === part);
    if (found === undefined) throw new Error(`no ${part} in ${key}`);
    return found;
  };
  return { scene, groups, group, words, shape };
}

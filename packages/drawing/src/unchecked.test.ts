import { unchecked } from '@cribwright/engine';
import { samplePlans, trailerOnCar } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { describe, expect, it } from 'vitest';
import type { Item } from './scene/scene.js';
import { walk } from './scene/walk.js';
import { drawScene, firstChoice, viewsOf } from './scenes/draw-scene.js';
import { drawn } from './testing/drawn.js';

const layouts = ['top', 'side', 'end', '3d'] as const;

const shapes = (items: readonly Item[], key: string) =>
  [...walk(items)].find((i) => i.kind === 'group' && i.key === key);

describe.each(Object.entries(samplePlans))('%s, before its checks have run', (_name, plan) => {
  const [before, after] = [unchecked(plan), analyze(plan, { push: true })];

  it.each(layouts)(
    'says in the view %s of each support that it is not checked, and gives no share',
    (view) => {
      const { scene, groups, words } = drawn(plan, before, { view });
      expect(words('heading')).toContain('not checked yet');
      expect(scene.words).toContain('The checks have not run yet');
      for (const { name } of groups)
        if (name !== undefined && /^(crib|step chock|strut|tie) /.test(name)) {
          expect(name).toContain('not checked yet');
        }
      expect(words().filter((w) => w.includes('%'))).toEqual([]);
      expect(scene.words).not.toContain('%');
      for (const item of walk(scene.items)) {
        expect(item.kind !== 'group' && item.tone).not.toBe('good');
        if (item.kind === 'group') expect(item.worst).toBeUndefined();
      }
    },
  );

  it.each(layouts)('puts everything in the view %s where it stays', (view) => {
    const [first, last] = [before, after].map((a) => drawScene(plan, a, { ...firstChoice, view }).items);
    for (const thing of [...plan.vehicles, ...plan.cribs, ...plan.struts, ...plan.ties])
      expect(shapes(first ?? [], thing.id)).toMatchObject({
        items: (shapes(last ?? [], thing.id) as Extract<Item, { kind: 'group' }>).items,
      });
  });

  it('keeps the tabs, and says in those that show only checks that they wait', () => {
    const ids = (views: ReturnType<typeof viewsOf>) => views.map((v) => v.id);
    const waiting = viewsOf(plan, before, true);
    expect(ids(waiting)).toEqual(expect.arrayContaining(ids(viewsOf(plan, after))));
    for (const view of waiting) {
      const { scene, words } = drawn(plan, before, { view: view.id });
      if (view.awaits === undefined) expect(layouts).toContain(view.id);
      else {
        expect(scene.words).toContain('Not checked yet');
        expect(words().join(' ')).toContain('checks for this view are still running');
      }
    }
  });
});

it('says that the check of the side push is still running only while it is', () => {
  const analysis = analyze(trailerOnCar);
  const choice = { ...firstChoice, view: 'side push' } as const;
  expect(drawScene(trailerOnCar, analysis, choice, true).words).toContain(
    'checks for this view are still running',
  );
  expect(drawScene(trailerOnCar, analysis, choice).words).toContain('nothing to show');
  expect(viewsOf(trailerOnCar, analysis, true).map((v) => v.id)).toContain('side push');
  expect(viewsOf(trailerOnCar, analysis).map((v) => v.id)).not.toContain('side push');
});

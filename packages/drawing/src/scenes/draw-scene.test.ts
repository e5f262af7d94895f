import { english } from '@cribwright/messages/testing';
import { planOf, samplePlans, tallCrib } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { describe, expect, it } from 'vitest';
import { views } from '../generated/views.js';
import type { Item } from '../scene/scene.js';
import { walk } from '../scene/walk.js';
import { svgOf } from '../svg/svg-of.js';
import { drawScene, firstChoice, scenesFor, viewsOf } from './draw-scene.js';

const groups = (items: readonly Item[]) =>
  [...walk(items)].filter((i): i is Extract<Item, { kind: 'group' }> => i.kind === 'group');
const words = (items: readonly Item[]) =>
  [...walk(items)].flatMap((i) => (i.kind === 'text' ? [i.text] : []));

describe.each(Object.entries(samplePlans))('%s', (_name, plan) => {
  const analysis = analyze(plan, { push: true });
  it.each(viewsOf(plan, analysis).map((v) => v.id))('draws the view %s', (view) => {
    const scene = drawScene(plan, analysis, { ...firstChoice, view });
    expect(scene.title).not.toBe('No drawing');
    expect(scene.words.length).toBeGreaterThan(20);
    expect(scene.caution).not.toBe('');
    expect(words(scene.items).join(' ')).toContain('planning and teaching aid');
    expect(svgOf(scene)).not.toMatch(/NaN|undefined/);
    expect(drawScene(plan, analysis, { ...firstChoice, view })).toEqual(scene);
  });

  it('names every element in the plan from above, so that each can be reached', () => {
    const named = new Set(
      groups(drawScene(plan, analysis, firstChoice).items).flatMap((g) =>
        g.name === undefined ? [] : [g.ref?.element],
      ),
    );
    for (const thing of [...plan.vehicles, ...plan.cribs, ...plan.struts, ...plan.ties, ...plan.chocks])
      expect(named).toContain(thing.id);
  });
});

it('offers every view somewhere', () => {
  const offered = new Set(
    Object.values(samplePlans).flatMap((p) => viewsOf(p, analyze(p, { push: true })).map((v) => v.id)),
  );
  expect([...offered].sort()).toEqual(views.map((v) => v.id).sort());
});

describe('what a crib that is too high shows', () => {
  const analysis = analyze(tallCrib);
  it('says 49 in against 24 in beside the crib', () => {
    const scene = drawScene(tallCrib, analysis, { ...firstChoice, view: 'crib', subject: 'crib/A' });
    expect(words(scene.items)).toContain('49 in');
    expect(words(scene.items)).toContain('limit 24 in');
  });
  it('marks the crib unsafe with a sign, not only a color', () => {
    const scene = drawScene(tallCrib, analysis, firstChoice);
    const label = groups(scene.items).find((g) => g.key === 'label crib/A');
    expect(words(label === undefined ? [] : [label])).toContain('!');
    expect(groups(scene.items).find((g) => g.key === 'crib/A')).toMatchObject({ worst: 'danger' });
  });
});

describe('stages and losses', () => {
  const { trailerOnCar: plan } = samplePlans;
  if (plan === undefined) throw new Error('the sample plan is gone');
  const analysis = analyze(plan);
  it('draws what is placed later in broken lines, and says so in its name', () => {
    const scene = drawScene(plan, analysis, { ...firstChoice, stage: 0 });
    const a = groups(scene.items).find((g) => g.key === 'crib/A');
    expect(a?.name).toContain('placed later');
    expect(a?.items.every((i) => i.kind !== 'polygon' || i.tone === 'ghost')).toBe(true);
    const end = groups(drawScene(plan, analysis, firstChoice).items).find((g) => g.key === 'crib/A');
    expect(end?.name).not.toContain('placed later');
  });
  it('shows each contact before and after a loss, in numbers of the analysis', () => {
    const stage = analysis.stages.length - 1;
    const lost = analysis.stages[stage]?.losses[0];
    const scene = drawScene(plan, analysis, { ...firstChoice, stage, lost: lost?.id });
    const marks = groups(scene.items).filter((g) => g.key.startsWith('load '));
    expect(marks.map((m) => m.key)).toEqual(lost?.reactions.map((r) => `load ${r.id}`));
    expect(marks.some((m) => m.name?.includes('before'))).toBe(true);
    expect(words(scene.items).join('\n')).toContain('how the loads move');
    expect(scene.words).toContain(english(lost?.title) ?? 'no loss');
  });
});

describe('what cannot be drawn', () => {
  it('is said on a sheet of its own, with the caution', () => {
    const empty = planOf({});
    const analysis = analyze(empty);
    for (const view of views) {
      const scene = drawScene(empty, analysis, { ...firstChoice, view: view.id });
      expect(scene.caution).not.toBe('');
      expect(svgOf(scene)).toContain('</svg>');
    }
    expect(drawScene(empty, analysis, { ...firstChoice, view: 'crib' }).words).toContain('nothing to show');
  });
  it('does not throw on a choice that the plan no longer has', () => {
    const analysis = analyze(tallCrib);
    const scenes = scenesFor(tallCrib, analysis, {
      view: 'crib',
      subject: 'crib/gone',
      stage: 99,
      lost: 'gone',
    });
    expect(scenes).toHaveLength(1);
    expect(scenes[0]?.title).toBe('Crib A');
  });
});

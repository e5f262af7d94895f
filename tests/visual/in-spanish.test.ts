import {
  drawScene,
  fieldSheet,
  firstChoice,
  lossTitles,
  type Scene,
  stageTitles,
  viewsOf,
} from '@cribwright/drawing';
import { walk } from '@cribwright/drawing/page';
import { wordsIn } from '@cribwright/messages';
import { samplePlans } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { examplePlans, sampleDrawings } from './drawn-plans.js';
import { english, englishLeft } from './english-left.js';

const es = wordsIn('es', 'us');
const said = (scene: Scene): readonly string[] => [
  scene.title,
  scene.words,
  scene.caution,
  ...[...walk(scene.items)].flatMap((i) =>
    i.kind === 'text' ? [i.text] : i.kind === 'group' ? [i.name ?? '', i.drag?.fixed ?? ''] : [],
  ),
  ...(scene.space?.things ?? []).flatMap((t) => [t.name, t.label ?? '']),
];

it('knows English when it reads it', () => {
  for (const word of ['the', 'known', 'capacity', 'side', 'allowable', 'front'])
    expect(english).toContain(word);
});

const drawn = [...sampleDrawings(Object.keys(samplePlans)), ...(await examplePlans())];

describe.each(drawn)('$name in Spanish', ({ plan, analysis }) => {
  const views = viewsOf(plan, analysis, false, es);

  it.each(views.map((v) => v.id))('has no English in the view %s', (view) => {
    const last = analysis.stages.length - 1;
    const lost = analysis.stages[last]?.losses[0]?.id;
    const choices = [
      { ...firstChoice, view },
      ...(last < 0
        ? []
        : [
            { ...firstChoice, view, stage: 0 },
            { ...firstChoice, view, stage: last, lost },
          ]),
    ];
    const texts = choices.flatMap((c) => said(drawScene(plan, analysis, c, false, es)));
    expect(texts.length).toBeGreaterThan(3);
    expect(englishLeft(texts, plan)).toEqual([]);
  });

  it('has no English in the names of views, stages and losses, and on the field sheet', () => {
    const page = fieldSheet(plan, analysis, { calculations: true, words: es })
      .replace(/<style>.*?<\/style>/gs, ' ')
      .replace(/<text[^>]*>.*?<\/text>/gs, ' ')
      .replace(/<[^>]*>/g, '\n');
    const texts = [
      ...views.flatMap((v) => [v.name, v.shows]),
      ...stageTitles(plan, analysis, es).map((t) => t.title),
      ...lossTitles(plan, analysis, undefined, es).map((t) => t.title),
      ...page.split('\n'),
    ];
    expect(englishLeft(texts, plan)).toEqual([]);
  });
});

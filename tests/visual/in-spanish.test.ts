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
import type { Plan } from '@cribwright/model';
import { samplePlans } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { englishTexts } from '../../packages/messages/src/generated/texts/english.js';
import { spanishTexts } from '../../packages/messages/src/generated/texts/spanish.js';
import { examplePlans, sampleDrawings } from './drawn-plans.js';

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}{2,}/gu) ?? [];

/** The text of a catalog without its ids and holes. */
const catalogWords = (catalog: string): ReadonlySet<string> =>
  new Set(wordsOf(catalog.replace(/^[\w-]+ =/gm, '').replace(/\{[^{}]*\}/g, ' ')));

const spanish = catalogWords(spanishTexts());
const english = new Set([...catalogWords(englishTexts())].filter((w) => !spanish.has(w)));

/** Names that the plan gives: its own, and those of what it takes from libraries. They are the same in each language. */
const named = new Set([
  'name',
  'title',
  'nominal',
  'species',
  'part',
  'item',
  'finding',
  'authority',
  'reason',
  'remark',
  'locator',
  'policy',
  'limit',
]);
function namesIn(value: unknown, key = ''): readonly string[] {
  if (typeof value === 'string') return named.has(key) ? wordsOf(value) : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([k, v]) => namesIn(v, Array.isArray(value) ? key : k));
}

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

/** English words in texts, with the text in which each stands. */
function left(texts: readonly string[], plan: Plan): readonly string[] {
  // One of the plan's `front mounts` is its `front mount`.
  const names = new Set(namesIn(plan).flatMap((n) => [n, n.replace(/s$/, '')]));
  return [
    ...new Set(
      texts.flatMap((text) =>
        wordsOf(text)
          .filter((w) => english.has(w) && !names.has(w))
          .map((w) => `${w}: ${text}`),
      ),
    ),
  ];
}

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
    expect(left(texts, plan)).toEqual([]);
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
    expect(left(texts, plan)).toEqual([]);
  });
});

import { drawScene, firstChoice, leaveOut } from '@cribwright/drawing';
import { unchecked } from '@cribwright/engine';
import { trailerOnCar as plan } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { joined, type Show } from './joined.js';
import type { PanelWords } from './panel-words.js';

const scene = drawScene(plan, unchecked(plan), firstChoice);
const show: Show = {
  kind: 'show',
  uri: 'file:///a.crib',
  version: 1,
  plans: [{ title: plan.title }],
  shown: 0,
  scenes: [scene],
  turn: 1,
  stages: [],
  losses: [{ id: 'car', title: 'car gives way' }],
  subjects: [],
  views: [],
  // What the words are does not matter here.
  words: {} as PanelWords,
  tally: { danger: 0, warning: 0, note: 0, notRun: 0, parts: [] },
  stale: undefined,
};
const first = joined(undefined, show);

it('takes a whole drawing as it comes', () => {
  expect(first?.scenes).toEqual([scene]);
});

it('puts back what was left out of a drawing that comes after the one it has', () => {
  const { sent } = leaveOut(scene, structuredClone(scene));
  const next = joined(first, { ...show, scenes: [sent], turn: 2, after: 1 });
  expect(next?.scenes[0]?.items).toBe(first?.scenes[0]?.items);
  expect(joined(first, { ...show, scenes: [sent], turn: 3, after: 2 })).toBeUndefined();
  expect(joined(undefined, { ...show, scenes: [sent], turn: 3, after: 1 })).toBeUndefined();
});

it('leaves the last drawing up where a message has none, but not that of another file', () => {
  expect(joined(first, { ...show, scenes: [] })?.scenes).toBe(first?.scenes);
  expect(joined(first, { ...show, uri: 'file:///b.crib', scenes: [] })?.scenes).toEqual([]);
});

it('keeps what may be lost where a message does not say', () => {
  const { losses: _losses, ...rest } = show;
  expect(joined(first, rest)?.show.losses).toEqual(show.losses);
  expect(joined(first, { ...rest, uri: 'file:///b.crib' })?.show.losses).toEqual([]);
});

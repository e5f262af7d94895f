import type { Item, Scene } from '@cribwright/drawing/page';
import { expect, it } from 'vitest';
import { same, shared } from './share.js';

const text = (key: string, words: string): Item => ({
  kind: 'text',
  key,
  tone: 'label',
  at: { x: 1, y: 2 },
  text: words,
  size: 3,
  anchor: 'start',
});
const group = (key: string, ...items: Item[]): Item => ({
  kind: 'group',
  key,
  ref: { element: key },
  name: key,
  items,
});
const scene = (...items: Item[]): Scene => ({
  choice: { view: 'plan', subject: undefined, stage: undefined, lost: undefined },
  title: 't',
  words: 'w',
  width: 1,
  height: 1,
  frame: undefined,
  items,
  caution: 'c',
});
const copy = (s: Scene): Scene => structuredClone(s);

it('keeps the object of every part that says the same', () => {
  const before = scene(group('A', text('t', 'one')), group('B', text('t', 'two')));
  const now = copy(scene(group('A', text('t', 'one')), group('B', text('t', 'other'))));
  const joined = shared(before, now);
  expect(joined.items[0]).toBe(before.items[0]);
  expect(joined.items[1]).not.toBe(before.items[1]);
  expect(joined).toEqual(now);
});

it('keeps the whole list where nothing changed, and finds parts that moved in it', () => {
  const before = scene(group('A', text('t', 'one')), group('B', text('t', 'two')));
  expect(shared(before, copy(before)).items).toBe(before.items);
  const joined = shared(
    before,
    copy(scene(group('B', text('t', 'two')), group('C'), group('A', text('t', 'one')))),
  );
  expect(joined.items.map((i) => i.key)).toEqual(['B', 'C', 'A']);
  expect(joined.items[0]).toBe(before.items[1]);
  expect(joined.items[2]).toBe(before.items[0]);
});

it('takes the new drawing as it is where the view is another', () => {
  const now = { ...copy(scene(text('t', 'one'))), choice: { ...scene().choice, view: 'side' as const } };
  expect(shared(scene(text('t', 'one')), now)).toBe(now);
});

it('tells values apart as they are written', () => {
  expect(same({ a: [1, { b: undefined }] }, { a: [1, { b: undefined }] })).toBe(true);
  expect(same({ a: 1 }, { a: 1, b: undefined })).toBe(false);
  expect(same([1, 2], [2, 1])).toBe(false);
  expect(same(null, {})).toBe(false);
});

import { expect, it } from 'vitest';
import { boundsOf, textBox } from '../scene/bounds.js';
import { at } from '../scene/draw.js';
import type { Item } from '../scene/scene.js';
import { walk } from '../scene/walk.js';
import { dimensionLine } from './dimension-line.js';

const wordsIn = (item: Item) =>
  [...walk([item])].filter((i): i is Extract<Item, { kind: 'text' }> => i.kind === 'text');

it('spans from end to end, with ticks, off to the side that is asked', () => {
  const item = dimensionLine('d', at(10, 50), at(60, 50), '16 in', 6);
  const main = [...walk([item])].find((i) => i.kind === 'line' && i.head === 'both ticks');
  expect(main).toMatchObject({ from: at(10, 56), to: at(60, 56) });
  expect(wordsIn(item)[0]).toMatchObject({ text: '16 in', at: at(35, 55) });
});

it('puts words past the end where the piece is shorter than they are', () => {
  const item = dimensionLine('d', at(10, 50), at(14, 50), '16 ft 11.7 in', 6);
  const [words] = wordsIn(item);
  expect(words && textBox(words).left).toBeGreaterThan(14);
});

it('turns its words along an upright dimension, and keeps them off a short one', () => {
  const tall = dimensionLine('d', at(20, 10), at(20, 60), '38.5 in', -6);
  expect(wordsIn(tall)[0]).toMatchObject({ turn: -90 });
  const short = dimensionLine('d', at(20, 10), at(20, 13), '38.5 in', -6);
  const [words] = wordsIn(short);
  expect(words?.turn).toBeUndefined();
  expect(words && boundsOf(words).right).toBeLessThan(14);
});

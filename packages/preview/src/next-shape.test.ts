import { expect, it } from 'vitest';
import { directions, nextShape } from './next-shape.js';

const spots = [
  { x: 0, y: 0 },
  { x: 10, y: 1 },
  { x: 30, y: 0 },
  { x: 9, y: 40 },
];
const go = (from: number, key: string) => nextShape(spots, from, directions[key] ?? { x: 0, y: 0 });

it('goes to the nearest shape in the direction of the key', () => {
  expect(go(0, 'ArrowRight')).toBe(1);
  expect(go(1, 'ArrowRight')).toBe(2);
  expect(go(1, 'ArrowDown')).toBe(3);
  expect(go(2, 'ArrowLeft')).toBe(1);
});

it('goes on in order where none lies that way, so that all can be reached', () => {
  expect(go(0, 'ArrowUp')).toBe(3);
  expect(go(2, 'ArrowRight')).toBe(3);
  expect(nextShape([{ x: 0, y: 0 }], 0, { x: 1, y: 0 })).toBe(0);
});

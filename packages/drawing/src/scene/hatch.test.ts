import { expect, it } from 'vitest';
import { hatchLines } from './hatch.js';

const square = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];

it('covers a shape with slanted lines that stay inside it', () => {
  for (const slope of [1, -1] as const) {
    const lines = hatchLines(square, 1.5, slope);
    // The diagonal of the square is 10 × √2 long: 14.14 / 1.5 is nine and a bit.
    expect(lines.length).toBeGreaterThanOrEqual(9);
    for (const [a, b] of lines) {
      expect(Math.abs(b.y - a.y)).toBeCloseTo(Math.abs(b.x - a.x), 6);
      for (const p of [a, b]) {
        expect(p.x).toBeGreaterThanOrEqual(-1e-9);
        expect(p.x).toBeLessThanOrEqual(10 + 1e-9);
      }
    }
  }
});

it('leaves the hollow of a shape free', () => {
  const horseshoe = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 8, y: 10 },
    { x: 8, y: 2 },
    { x: 2, y: 2 },
    { x: 2, y: 10 },
    { x: 0, y: 10 },
  ];
  for (const [a, b] of hatchLines(horseshoe, 0.7, 1)) {
    const [x, y] = [(a.x + b.x) / 2, (a.y + b.y) / 2];
    expect(x > 2.01 && x < 7.99 && y > 2.01).toBe(false);
  }
});

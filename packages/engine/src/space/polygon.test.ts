import { band, rectangle } from '@cribwright/model';
import { describe, expect, it } from 'vitest';
import { overlap } from './polygon.js';
import { lengthInside } from './through-box.js';

const square = (x: number, y = 0, angle = 0) => rectangle({ x, y }, 2, 2, angle);

describe('overlap of outlines', () => {
  it('is how deep they run into each other', () =>
    expect(overlap(square(0), square(1.5))).toBeCloseTo(0.5, 9));
  it('is nothing where they touch or lie apart', () => {
    expect(overlap(square(0), square(2))).toBe(0);
    expect(overlap(square(0), square(9, 9))).toBe(0);
  });
  it('turns with them: a square on its corner reaches √2 from its middle', () => {
    expect(overlap(square(0), square(2.4, 0, Math.PI / 4))).toBeCloseTo(1 + Math.SQRT2 - 2.4, 9);
    expect(overlap(square(0), square(2.42, 0, Math.PI / 4))).toBe(0);
  });
  it('follows a band between two places', () =>
    expect(overlap(band({ x: -5, y: -5 }, { x: 5, y: 5 }, 0.2), square(3, 3))).toBeGreaterThan(0));
});

describe('length of a line inside a solid', () => {
  const solid = { element: 'crib/A', outline: square(0), low: 0, high: 1 };
  it('is cut by sides and by heights', () => {
    expect(lengthInside({ x: -3, y: 0, z: 0.5 }, { x: 3, y: 0, z: 0.5 }, solid)).toBeCloseTo(2, 9);
    expect(lengthInside({ x: 0, y: 0, z: -1 }, { x: 0, y: 0, z: 4 }, solid)).toBeCloseTo(1, 9);
  });
  it('is nothing above or beside it', () => {
    expect(lengthInside({ x: -3, y: 0, z: 1.5 }, { x: 3, y: 0, z: 1.5 }, solid)).toBe(0);
    expect(lengthInside({ x: -3, y: 2, z: 0.5 }, { x: 3, y: 2, z: 0.5 }, solid)).toBe(0);
  });
});

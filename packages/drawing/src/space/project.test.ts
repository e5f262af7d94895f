import { expect, it } from 'vitest';
import { fromAbove, fromBehind, fromDriverSide, outline } from './project.js';
import { at3 } from './vector.js';

it('puts the front to the left, and the passenger side up or to the right', () => {
  const [front, rear] = [at3(0, 0, 0), at3(5, 0, 0)];
  expect(fromAbove.flat(front).x).toBeLessThan(fromAbove.flat(rear).x);
  expect(fromDriverSide.flat(front).x).toBeLessThan(fromDriverSide.flat(rear).x);
  const passenger = at3(0, 1, 0);
  expect(fromAbove.flat(passenger).y).toBeLessThan(0);
  expect(fromBehind.flat(passenger).x).toBeGreaterThan(0);
  // What stands on the driver side is nearer to who looks from there.
  expect(fromDriverSide.near(at3(0, -1, 0))).toBeGreaterThan(fromDriverSide.near(passenger));
});

it('draws the outline once round, without what lies inside', () => {
  const corners = [
    { x: 0, y: 0 },
    { x: 4, y: 0 },
    { x: 4, y: 2 },
    { x: 0, y: 2 },
  ];
  const round = outline([...corners, { x: 2, y: 1 }, { x: 2, y: 0 }, ...corners]);
  expect(round).toHaveLength(4);
  for (const corner of corners) expect(round).toContainEqual(corner);
});

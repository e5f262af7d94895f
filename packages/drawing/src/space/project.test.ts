import { expect, it } from 'vitest';
import { block } from '../scene/solid.js';
import { at3 } from '../scene/vector.js';
import { fromAbove, fromBehind, fromDriverSide, outline, reachOf } from './project.js';

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

it('goes round an upright block and one that is hardly turned in the same order', () => {
  const corners = (turn: number) =>
    [0, 0, 4, 4].flatMap((x) => [0, 2].map((y) => ({ x: x - turn * y, y: y + turn * x })));
  const turned = outline(corners(-1e-7));
  expect(turned).toHaveLength(4);
  outline(corners(0)).forEach((corner, i) => {
    expect(corner.x).toBeCloseTo(turned[i]?.x ?? Number.NaN, 5);
    expect(corner.y).toBeCloseTo(turned[i]?.y ?? Number.NaN, 5);
  });
});

it('finds the room of blocks, of thick rods and of places besides', () => {
  const timber = block('timber', 'timber', at3(1, -1, 0), at3(3, 2, 1));
  const rod = {
    kind: 'rod',
    key: 'r',
    tone: 'strut',
    from: at3(0, 0, 0),
    to: at3(0, 5, 4),
    thickness: 0.2,
  } as const;
  expect(reachOf([timber], fromAbove)).toEqual({ left: 1, right: 3, top: -2, bottom: 1 });
  expect(reachOf([timber, rod], fromAbove)).toEqual({ left: -0.1, right: 3, top: -5.1, bottom: 1 });
  expect(reachOf([timber, rod], fromAbove, [], 'bare')).toMatchObject({ left: 0, top: -5 });
  expect(reachOf([timber], fromAbove, [at3(9, -9, 0)])).toMatchObject({ right: 9, bottom: 9 });
});

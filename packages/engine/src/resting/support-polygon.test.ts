import { describe, expect, it } from 'vitest';
import { insideBy, nearestEdge, supportPolygon } from './support-polygon.js';

const square = [
  { x: 0, y: 0 },
  { x: 2, y: 0 },
  { x: 2, y: 2 },
  { x: 0, y: 2 },
];

describe('the line round the supports', () => {
  it('leaves out what stands inside or on an edge', () => {
    expect(supportPolygon([...square, { x: 1, y: 1 }, { x: 1, y: 0 }, { x: 0, y: 0 }])).toHaveLength(4);
  });

  it('is a line or a point where the supports are', () => {
    const line = [0, 1, 2].map((x) => ({ x, y: x }));
    expect(supportPolygon(line)).toHaveLength(2);
    expect(supportPolygon([{ x: 1, y: 1 }])).toHaveLength(1);
    expect(supportPolygon([])).toEqual([]);
  });
});

describe('how far inside', () => {
  const round = supportPolygon(square);
  it.each([
    [{ x: 1, y: 1 }, 1],
    [{ x: 0.25, y: 1 }, 0.25],
    [{ x: 0, y: 1 }, 0],
    [{ x: -3, y: 1 }, -3],
    [{ x: -3, y: -4 }, -5],
  ])('%o is inside by %f', (p, by) => {
    expect(insideBy(round, p)).toBeCloseTo(by, 12);
  });

  it('is never inside a line', () => {
    expect(
      insideBy(supportPolygon([square[0], square[2]].flatMap((p) => p ?? [])), { x: 1, y: 1 }),
    ).toBeCloseTo(0, 12);
    expect(insideBy([], { x: 1, y: 1 })).toBe(Number.NEGATIVE_INFINITY);
  });

  it('names the edge it would tip over', () => {
    const edge = nearestEdge(round, { x: 1.9, y: 1 });
    expect([edge?.a.x, edge?.b.x]).toEqual([2, 2]);
  });
});

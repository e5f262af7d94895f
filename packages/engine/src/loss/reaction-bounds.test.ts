import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PolygonPoint } from '../resting/support-polygon.js';
import { shareBounds } from './reaction-bounds.js';

/** With three equations an optimum loads at most three contacts: all triples, pairs and single ones, at one center. */
function byTriples(
  contacts: readonly PolygonPoint[],
  index: number,
  c: PolygonPoint,
): { least: number; most: number } | undefined {
  const shares: number[] = [];
  const n = contacts.length;
  const p = (i: number) => contacts[i] ?? { x: 0, y: 0 };
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++)
      for (let k = j + 1; k < n; k++) {
        const [a, b, d] = [p(i), p(j), p(k)];
        const area = (b.x - a.x) * (d.y - a.y) - (b.y - a.y) * (d.x - a.x);
        if (Math.abs(area) < 1e-9) continue;
        const fb = ((c.x - a.x) * (d.y - a.y) - (c.y - a.y) * (d.x - a.x)) / area;
        const fd = ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / area;
        const fa = 1 - fb - fd;
        if (Math.min(fa, fb, fd) < -1e-12) continue;
        shares.push(i === index ? fa : j === index ? fb : k === index ? fd : 0);
      }
  return shares.length === 0 ? undefined : { least: Math.min(...shares), most: Math.max(...shares) };
}

const square = [
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 4, y: 2 },
  { x: 0, y: 2 },
];

describe('bounds by statics', () => {
  it('gives half the weight at most on a corner of a square, and none at least', () => {
    const bounds = shareBounds(square, 0, [{ x: 2, y: 1 }]);
    expect(bounds?.most).toBeCloseTo(0.5, 12);
    expect(bounds?.least).toBeCloseTo(0, 12);
    // Moments about the diagonal of the other two.
    expect((bounds?.line?.center ?? 0) / (bounds?.line?.contact ?? 1)).toBeCloseTo(0.5, 12);
  });

  it('is the lever on two supports', () => {
    const two = [
      { x: 0, y: 0 },
      { x: 6, y: 0 },
    ];
    const bounds = shareBounds(two, 0, [{ x: 2, y: 0 }]);
    expect(bounds?.most).toBeCloseTo(2 / 3, 12);
    expect(bounds?.least).toBeCloseTo(2 / 3, 12);
    expect(shareBounds(two, 0, [{ x: 2, y: 0.1 }])).toBeUndefined();
  });

  it('may put everything on a contact under the center', () => {
    expect(
      shareBounds(square, 0, [
        { x: 0, y: 0 },
        { x: 1, y: 1 },
      ])?.most,
    ).toBe(1);
    expect(shareBounds([{ x: 1, y: 1 }], 0, [{ x: 1, y: 1 }])).toEqual({
      least: 1,
      most: 1,
      line: undefined,
    });
  });

  it('has no bounds where nothing balances', () => {
    expect(shareBounds(square, 0, [{ x: 5, y: 1 }])).toBeUndefined();
    expect(shareBounds([{ x: 1, y: 1 }], 0, [{ x: 2, y: 1 }])).toBeUndefined();
  });

  it('agrees with every triple of contacts, center by center, and holds over ranges', () => {
    const coordinate = (m: number) => fc.integer({ min: -m * 16, max: m * 16 }).map((n) => n / 16);
    const point = fc.record({ x: coordinate(8), y: coordinate(2) });
    fc.assert(
      fc.property(fc.array(point, { minLength: 3, maxLength: 9 }), point, point, (contacts, a, b) => {
        const box = [a, { x: a.x, y: b.y }, b, { x: b.x, y: a.y }];
        const over = shareBounds(contacts, 0, box);
        for (const c of [...box, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }]) {
          const exact = byTriples(contacts, 0, c);
          if (exact === undefined) continue;
          const one = shareBounds(contacts, 0, [c]);
          expect(one?.most).toBeCloseTo(exact.most, 9);
          expect(one?.least).toBeCloseTo(exact.least, 9);
          expect(over?.most ?? -1).toBeGreaterThanOrEqual(exact.most - 1e-9);
          expect(over?.least ?? 2).toBeLessThanOrEqual(exact.least + 1e-9);
        }
      }),
      { numRuns: 500 },
    );
  });
});

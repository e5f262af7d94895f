import { type Outline, rectangle } from '@cribwright/model';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { nearPairs } from './near-pairs.js';
import { overlap } from './polygon.js';

const place = fc.double({ min: -5, max: 5, noNaN: true });
const outline = fc
  .tuple(
    place,
    place,
    fc.double({ min: 0.1, max: 3, noNaN: true }),
    fc.double({ min: 0, max: 3, noNaN: true }),
  )
  .map(([x, y, length, angle]) => rectangle({ x, y }, length, 1, angle));

const overlapping = (list: readonly Outline[], pairs: readonly (readonly [number, number])[]) =>
  pairs.filter(([i, j]) => overlap(list[i] ?? [], list[j] ?? []) > 0);

it('leaves out no two that overlap, and keeps their order', () => {
  fc.assert(
    fc.property(fc.array(outline, { maxLength: 20 }), (list) => {
      const all = list.flatMap((_, i) => list.slice(i + 1).map((_b, k) => [i, i + 1 + k] as const));
      expect(overlapping(list, nearPairs(list))).toEqual(overlapping(list, all));
    }),
  );
});

it('looks at few pairs of many that stand in rows', () => {
  const rows = Array.from({ length: 400 }, (_, i) =>
    rectangle({ x: i % 20, y: Math.floor(i / 20) }, 0.9, 0.9),
  );
  expect(nearPairs(rows)).toEqual([]);
});

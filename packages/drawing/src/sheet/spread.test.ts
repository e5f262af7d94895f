import fc from 'fast-check';
import { expect, it } from 'vitest';
import { spread } from './spread.js';

it('leaves labels where they wish, where they do not touch', () => {
  expect(
    spread(
      [
        { at: 10, room: 5 },
        { at: 30, room: 5 },
      ],
      0,
      40,
    ),
  ).toEqual([10, 30]);
});

it('shares the move between neighbors that press on each other', () => {
  expect(
    spread(
      [
        { at: 10, room: 6 },
        { at: 12, room: 6 },
      ],
      0,
      40,
    ),
  ).toEqual([8, 14]);
});

it('says so where there is not room enough', () => {
  expect(
    spread(
      [
        { at: 1, room: 6 },
        { at: 2, room: 6 },
      ],
      0,
      10,
    ),
  ).toBeUndefined();
});

it('never overlaps, keeps the order and stays between the ends', () => {
  const wishes = fc.array(
    fc.record({
      at: fc.double({ min: -20, max: 120, noNaN: true }),
      room: fc.double({ min: 0.5, max: 12, noNaN: true }),
    }),
    { minLength: 1, maxLength: 14 },
  );
  fc.assert(
    fc.property(wishes, (list) => {
      const total = list.reduce((sum, w) => sum + w.room, 0);
      const places = spread(list, 0, 100);
      if (total > 100) return expect(places).toBeUndefined();
      const order = list.map((w, i) => ({ ...w, place: places?.[i] ?? Number.NaN, i }));
      order.sort((a, b) => a.at - b.at || a.i - b.i);
      let end = 0;
      for (const o of order) {
        expect(o.place - o.room / 2).toBeGreaterThanOrEqual(end - 1e-6);
        end = o.place + o.room / 2;
      }
      expect(end).toBeLessThanOrEqual(100 + 1e-6);
    }),
  );
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { alike } from './alike.js';

it('is the old object where it says the same, and keeps what it can where it does not', () => {
  const before = {
    list: [
      { id: 'a', n: 1 },
      { id: 'b', n: 2 },
    ],
    more: { x: [1, 2] },
  };
  expect(alike(before, structuredClone(before))).toBe(before);
  const now = alike(before, {
    ...structuredClone(before),
    list: [
      { id: 'a', n: 1 },
      { id: 'b', n: 3 },
    ],
  });
  expect(now).toEqual({
    list: [
      { id: 'a', n: 1 },
      { id: 'b', n: 3 },
    ],
    more: { x: [1, 2] },
  });
  expect(now.list[0]).toBe(before.list[0]);
  expect(now.more).toBe(before.more);
});

it('finds what moved in a list by its id or key', () => {
  const before = [
    { key: 'a', n: [1] },
    { key: 'b', n: [2] },
  ];
  const now = alike(before, [
    { key: 'new', n: [0] },
    { key: 'b', n: [2] },
    { key: 'a', n: [1] },
  ]);
  expect(now[1]).toBe(before[1]);
  expect(now[2]).toBe(before[0]);
});

it.each([
  [{ a: 1 }, { a: 1, b: undefined }],
  [{ a: 1, b: undefined }, { a: 1 }],
  [
    [1, 2],
    [2, 1],
  ],
  [[1, 2], [1]],
  [[], {}],
  [{}, []],
  [null, {}],
  [{}, null],
  [0, -0],
])('takes %j for another than %j', (before, now) => {
  expect(alike(before, now)).toBe(now);
});

it('says the same as the new value, whatever came before, and changes neither', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), (before, now) => {
      const [b, n] = [structuredClone(before), structuredClone(now)];
      expect(alike(before, now)).toEqual(n);
      expect(before).toEqual(b);
      expect(now).toEqual(n);
      const again = alike(now, structuredClone(now));
      expect(again).toBe(now);
    }),
  );
});

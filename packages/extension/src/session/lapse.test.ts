import { expect, it } from 'vitest';
import { Lapse } from './lapse.js';

const followed = () => {
  const at = { holds: true, told: [] as boolean[], waiting: [] as (() => void)[] };
  const lapse: Lapse = new Lapse(
    () => at.holds,
    () => at.told.push(lapse.lapsed),
    (run) => {
      at.waiting.push(run);
      return () => {
        at.waiting = at.waiting.filter((one) => one !== run);
      };
    },
  );
  const aMoment = () => {
    for (const run of at.waiting.splice(0)) run();
  };
  return { at, lapse, aMoment };
};

it('tells nothing where the next answer comes at once', () => {
  const { at, lapse, aMoment } = followed();
  at.holds = false;
  lapse.look();
  at.holds = true;
  lapse.look();
  aMoment();
  expect(at.told).toEqual([]);
});

it('tells once that what was said does not hold, and once that it does again', () => {
  const { at, lapse, aMoment } = followed();
  at.holds = false;
  for (const _edit of [1, 2, 3]) {
    lapse.look();
    expect(at.waiting.length).toBeLessThan(2);
  }
  expect(at.told).toEqual([]);
  aMoment();
  lapse.look();
  aMoment();
  expect(at.told).toEqual([true]);
  at.holds = true;
  lapse.look();
  lapse.look();
  expect(at.told).toEqual([true, false]);
});

it('waits for no moment where something else is looked at', () => {
  const { at, lapse } = followed();
  at.holds = false;
  lapse.restart();
  expect(at.told).toEqual([true]);
});

import { english } from '@cribwright/messages/testing';
import type { StockItem } from '@cribwright/model';
import { crib, inch, planOf, step } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const timber = (count: number, item = 'Fir4x4', inches = 24): StockItem => ({
  kind: 'timber',
  item,
  length: inches * inch,
  count,
  ref: { element: 'cache/Pine2', property: `${item} ${count}` },
});
const unit = (...carries: readonly StockItem[]) => [
  { id: 'cache/Pine2', name: 'Pine 2', people: 4, carries, ref: { element: 'cache/Pine2' } },
];
const wedges: StockItem = {
  kind: 'wedge pair',
  item: 'wedge pairs',
  count: 8,
  ref: { element: 'cache/Pine2' },
};
// Eleven courses of two, the base filled with six: 6 + 10 × 2 = 26.
const plan = (carries: readonly StockItem[], change = {}) =>
  planOf({ cribs: [crib('A', 1, 1)], units: unit(...carries, wedges), ...change });
const found = (...given: Parameters<typeof plan>) =>
  check(rule, plan(...given)).map((f) => english(f.message));

describe('cache-short', () => {
  it('passes a cache that holds it all', () => expect(found([timber(26)])).toEqual([]));
  it('says by how many it is short', () =>
    expect(found([timber(20)])).toEqual([
      'Needed at peak: 26 Fir4x4 24 in long. Units carry 20, 6 short. Request another unit, or build with less.',
    ]));
  it('does not count another length or another timber, and names what could stand in', () =>
    expect(found([timber(26, 'Fir4x4', 18), timber(30, 'Oak4x4')])[0]).toContain(
      '26 short. Possible substitutes: Oak4x4',
    ));
  it('counts a line listed twice once, at the lesser number', () =>
    expect(found([timber(26), timber(20)])[0]).toContain('Units carry 20,'));
  it('gives back what a step takes out', () => {
    const cribs = [crib('A', 1, 1), crib('B', 4, 1)];
    const steps = [step(1, 'build', ['crib/A']), step(2, 'remove', ['crib/A']), step(3, 'build', ['crib/B'])];
    expect(found([timber(26)], { cribs })).toHaveLength(1);
    expect(found([timber(26)], { cribs, steps })).toEqual([]);
  });
});

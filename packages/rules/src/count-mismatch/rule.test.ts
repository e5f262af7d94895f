import { english } from '@cribwright/messages/testing';
import { crib, planOf, step, trailerOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const built = (...actions: readonly ('build' | 'remove' | 'check')[]) =>
  check(
    rule,
    planOf({ cribs: [crib('A', 1, 1)], steps: actions.map((a, i) => step(i + 1, a, ['crib/A'])) }),
  ).map((f) => english(f.message));

it('passes the sample', () => expect(check(rule, trailerOnCar)).toEqual([]));
it('finds what is built twice', () =>
  expect(built('build', 'build')[0]).toContain('Steps 1 and 2 both build crib A'));
it('lets a thing be taken out and built again', () =>
  expect(built('build', 'remove', 'build', 'check')).toEqual([]));
it('finds what a cache lists twice', () => {
  const line = (count: number) =>
    ({
      kind: 'chock',
      item: 'wheel chocks',
      count,
      ref: { element: 'cache/P', property: `${count}` },
    }) as const;
  const unit = {
    id: 'cache/P',
    name: 'Pine 2',
    people: 4,
    carries: [line(4), line(6)],
    ref: { element: 'cache/P' },
  };
  expect(english(check(rule, planOf({ units: [unit] }))[0]?.message)).toContain(
    'lists wheel chocks twice, with 4 and with 6',
  );
});

import { english } from '@cribwright/messages/testing';
import type { Interval } from '@cribwright/model';
import { between, exactly } from '@cribwright/model';
import { lb, planOf, straightTruck, trailerOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const truck = (statedWeight: Interval) => planOf({ vehicles: [{ ...straightTruck, statedWeight }] });

describe('weight-sum', () => {
  it('leaves vehicles alone whose weight follows from their axles', () =>
    expect(check(rule, trailerOnCar)).toEqual([]));

  // The sample truck's axles carry 7,000 and 6,500 lb.
  it.each([
    [exactly(13_500 * lb), 0],
    [between(13_000 * lb, 14_000 * lb), 0],
    [exactly(13_300 * lb), 0],
    [exactly(31_500 * lb), 1],
    [exactly(1350 * lb), 1],
  ])('case %#', (weight, findings) => expect(check(rule, truck(weight))).toHaveLength(findings));

  it('shows both sums', () => {
    const [found] = check(rule, truck(exactly(31_500 * lb)));
    expect(english(found?.message)).toBe(
      'The stated empty weight of the truck is 31,500 lb. Its axles and other supports carry 13,500 lb empty (7,000 lb + 6,500 lb). ' +
        'One of them is wrong. The plan uses the stated weight.',
    );
    expect(found?.related).toHaveLength(2);
  });

  it('lets a trailer weigh more than its axles carry where the load on its kingpin is not known', () => {
    const parts = vanTrailer.parts.map((p) =>
      p.id === 'kingpin' ? { ...p, carries: { stiffness: 1e6, down: true } } : p,
    );
    const trailer = (pounds: number) =>
      planOf({ vehicles: [{ ...vanTrailer, parts, statedWeight: exactly(pounds * lb) }] });
    expect(check(rule, trailer(14_000))).toEqual([]);
    expect(check(rule, trailer(8000))[0]?.message.id).toBe('weight-sum.less-than-axles');
  });
});

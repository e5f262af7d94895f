import { english } from '@cribwright/messages/testing';
import { airSprungCab, cabOnAir, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

describe('air-spring-free', () => {
  it('passes a cab cribbed to its frame, and vehicles without such a cab', () => {
    expect(check(rule, airSprungCab)).toEqual([]);
    expect(check(rule, trailerOnCar)).toEqual([]);
  });

  it('finds a cab left on air', () => {
    const [found, ...more] = check(rule, cabOnAir);
    expect(more).toEqual([]);
    expect(found?.at).toEqual({ element: 'vehicle/tractor', property: 'cab' });
    expect(english(found?.message)).toBe(
      'The cab of the tractor still rides on its air springs. It moves while tools work and drops if the air leaks out. Build a crib between the cab and the frame, or set struts under the cab.',
    );
  });

  it('does not count cribs that do not reach the cab', () => {
    const short = { ...airSprungCab, cribs: airSprungCab.cribs.map((c) => ({ ...c, courses: 1 })) };
    expect(check(rule, short)).toHaveLength(1);
  });
});

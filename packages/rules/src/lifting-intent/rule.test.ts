import { english } from '@cribwright/messages/testing';
import { lb, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

// The trailer weighs 50,000 to 56,000 lb: 5 per cent of the lightest is 2,500 lb.
const preloaded = (pounds: number, change = {}) => ({
  ...trailerOnCar,
  cribs: trailerOnCar.cribs.map((c) =>
    c.name === 'A' && c.wedges !== undefined ? { ...c, wedges: { ...c.wedges, preload: pounds * lb } } : c,
  ),
  ...change,
});

describe('lifting-intent', () => {
  it('passes what is set snug', () => {
    expect(check(rule, trailerOnCar)).toEqual([]);
    expect(check(rule, preloaded(2499))).toEqual([]);
  });
  it('finds a lift that the plan does not mean', () =>
    expect(english(check(rule, preloaded(3000))[0]?.message)).toContain('push up with 3,000 lb in total'));
  it('takes a lift that the plan means', () =>
    expect(check(rule, preloaded(3000, { lifts: true }))).toEqual([]));
  it('counts a strut by its upward part', () => {
    const struts = trailerOnCar.struts.map((s) => ({ ...s, preload: 1000 * lb }));
    // Four struts, 40 in up and 38 in out: 4 × 1,000 × 40 / 55.17 = 2,900 lb, to the pound.
    expect(english(check(rule, { ...trailerOnCar, struts })[0]?.message)).toContain(
      'push up with 2,900 lb in total',
    );
  });
  it('wants cribs to follow a lift', () => {
    const struts = trailerOnCar.struts.map((s) => ({ ...s, preload: 1000 * lb }));
    expect(check(rule, { ...trailerOnCar, struts, cribs: [], lifts: true })[0]?.message.id).toBe(
      'lifting-intent.follow',
    );
  });
});

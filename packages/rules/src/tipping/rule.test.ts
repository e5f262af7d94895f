import { english } from '@cribwright/messages/testing';
import type { Vehicle } from '@cribwright/model';
import { inch, planOf, policyWith, samplePlans, straightTruck, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const truck: Vehicle = {
  ...straightTruck,
  cargo: [],
  emptyCenterHeight: { low: 90 * inch, high: 90 * inch },
};

describe('tipping', () => {
  it.each(Object.entries(samplePlans))('finds %s steady enough', (_name, plan) => {
    expect(check(rule, plan)).toEqual([]);
  });

  // NHTSA rollover rulemaking, chapter V: T / 2H. Track 72 in, center at 90 in: 0.4.
  it.each([
    [0.39, 0],
    [0.41, 1],
  ])('against a margin of %f has %i findings for a truck that tips at 0.4', (margin, findings) => {
    const plan = { ...planOf({ vehicles: [truck] }), policy: policyWith('push margin', margin) };
    expect(check(rule, plan)).toHaveLength(findings);
  });

  it('shows the sum', () => {
    const plan = { ...planOf({ vehicles: [truck] }), policy: policyWith('push margin', 0.5) };
    const [found] = check(rule, plan);
    expect(english(found?.message)).toContain('under a side push of 40 % of its weight (36 in ÷ 90 in)');
    expect(english(found?.message)).toContain('The policy requires 50 %');
  });

  it('does not pass where the height of the center is not known', () => {
    const [found] = check(rule, planOf({ vehicles: [{ ...vanTrailer, emptyCenterHeight: undefined }] }));
    expect(found?.couldNotRun).toBe(true);
  });
});

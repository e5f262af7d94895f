import { english } from '@cribwright/messages/testing';
import { planOf, policyWith, truckOnCar, vanTrailer } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const pushed = { push: true };

describe('push-margin', () => {
  it('says nothing where the push was not asked for', () => {
    expect(check(rule, { ...truckOnCar, policy: policyWith('push margin', 5) })).toEqual([]);
  });

  it('passes a truck on cribs at a tenth of its weight', () => {
    expect(check(rule, truckOnCar, pushed)).toEqual([]);
  });

  it('says from where, how much, and what gives first', () => {
    const [found, ...more] = check(rule, { ...truckOnCar, policy: policyWith('push margin', 0.5) }, pushed);
    // The car beneath is pushed as well.
    expect(more.map((f) => f.subject.element)).toEqual(['vehicle/car']);
    expect(found?.severity).toBe('danger');
    expect(english(found?.message)).toMatch(
      /^A side push toward .* at \d+( \d+\/\d+)? in: truck and its supports hold \d+ % of its weight \(.* ÷ .*\)\. The policy requires 50 %\. Fails first: .*\.$/,
    );
    expect(found?.figures[0]?.formula).toBeDefined();
  });

  const lying = (frictionBody: { low: number; high: number } | undefined) => {
    const plan = planOf({ vehicles: [{ ...vanTrailer, position: { kind: 'on its side', side: 'driver' } }] });
    const surface = { ...plan.ground.surface, frictionBody };
    return { ...plan, ground: { ...plan.ground, surface } };
  };

  it('counts the low end of the friction under a vehicle that lies, and shows it', () => {
    expect(check(rule, lying({ low: 0.2, high: 0.5 }), pushed)).toEqual([]);
    const [found] = check(rule, lying({ low: 0.05, high: 0.5 }), pushed);
    expect(found?.severity).toBe('danger');
    expect(english(found?.message)).toContain('hold 5 % of its weight');
    expect(found?.figures.find((f) => f.key === 'grip')?.value).toEqual({ low: 0.05, high: 0.05 });
  });

  it('does not pass a vehicle that lies where nobody knows the friction under it', () => {
    const [found] = check(rule, lying(undefined), pushed);
    expect(found?.couldNotRun).toBe(true);
    expect(english(found?.message)).toContain('give the body friction of the surface');
  });

  it('does not pass where the height of the center is not known', () => {
    const [found] = check(
      rule,
      planOf({ vehicles: [{ ...vanTrailer, emptyCenterHeight: undefined }] }),
      pushed,
    );
    expect(found?.couldNotRun).toBe(true);
    expect(english(found?.message)).toContain('height of the center of gravity not known');
  });
});

import { english } from '@cribwright/messages/testing';
import type { Plan } from '@cribwright/model';
import { chock, planOf, straightTruck } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const onGrade = (grade: number, change: Partial<Plan> = {}): Plan => {
  const plan = planOf({ vehicles: [straightTruck], chocks: [chock('K1', 'truck')], ...change });
  return { ...plan, ground: { ...plan.ground, grade, toward: 'rear' } };
};

describe('grade-slide', () => {
  it.each([0, 0.05, 0.2])('passes one chocked axle on a grade of %f', (grade) => {
    expect(check(rule, onGrade(grade))).toEqual([]);
  });

  // OpenStax University Physics, volume 1, section 6.2: on an incline W sin θ pulls and μ N holds.
  it('finds that one chocked axle slides where the grade passes its share of friction', () => {
    const [found, ...more] = check(rule, onGrade(0.6));
    expect(more).toEqual([]);
    expect(english(found?.message)).toMatch(
      /^On a grade of 60 %, the truck pulls [\d,]+ lb downhill \(.* × sin\(arctan\(60 %\)\)\)\. Its chocked wheels hold [\d,]+ lb/,
    );
    const [demand, hold] = found?.figures ?? [];
    expect(demand?.value?.high).toBeGreaterThan(hold?.value?.low ?? Number.POSITIVE_INFINITY);
  });

  it('does not count a chock on the wrong side of the wheel', () => {
    const wrong = onGrade(0.02, {
      vehicles: [{ ...straightTruck, brakesSet: undefined }],
      chocks: [chock('K1', 'truck', { ways: 'forward' })],
    });
    expect(check(rule, wrong)).toHaveLength(1);
  });

  // 49 CFR 571.121, S5.6.1 (from memory): a parking brake holds 0.28 of what is on its axle.
  describe('with a chock on the wrong side', () => {
    const wrong = [chock('K1', 'truck', { ways: 'forward' })];
    const braked = (brakesSet: boolean | undefined, grade: number) =>
      check(rule, onGrade(grade, { vehicles: [{ ...straightTruck, brakesSet }], chocks: wrong }));
    const holds = (brakesSet: boolean | undefined, grade: number) =>
      braked(brakesSet, grade)[0]?.figures?.[1]?.value?.low;

    it('counts brakes that are set at 0.28 of the load behind the foremost axle', () => {
      const [found] = braked(true, 0.6);
      const hold = found?.figures?.[1];
      const [brake, load] = ['brake', 'onBrakes'].map((key) => hold?.inputs.find((f) => f.key === key));
      expect(brake?.value?.low).toBe(0.28);
      expect(load?.value?.low).toBeGreaterThan(0);
      expect(hold?.value?.low).toBeCloseTo(0.28 * (load?.value?.low ?? 0), 6);
      expect(english(found?.message)).toMatch(/Its chocked and braked wheels hold [\d,]+ lb/);
      expect(braked(true, 0.02)).toEqual([]);
    });
    it.each([false, undefined])('counts none where they are %s', (brakesSet) => {
      expect(braked(brakesSet, 0.02)).toHaveLength(1);
      expect(holds(brakesSet, 0.02)).toBe(0);
    });
  });

  it.each(['grade', 'direction'] as const)(
    'reports that the check could not run where the %s is not stated',
    (unsaid) => {
      const plan = onGrade(unsaid === 'grade' ? 0 : 0.03);
      const [found, ...more] = check(rule, { ...plan, ground: { ...plan.ground, unsaid } });
      expect(more).toEqual([]);
      expect(found).toMatchObject({ couldNotRun: true, at: { element: 'ground' } });
      expect(english(found?.message)).toMatch(
        unsaid === 'grade'
          ? /^Grade not stated\. Slide check not run/
          : /^Direction of the 3 % grade not stated\./,
      );
    },
  );

  it('leaves wheels without any chock to the rule that asks for them', () => {
    expect(check(rule, onGrade(0.02, { chocks: [] }))).toEqual([]);
  });
});

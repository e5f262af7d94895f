import { english } from '@cribwright/messages/testing';
import type { Expectation, Plan } from '@cribwright/model';
import { exactly } from '@cribwright/model';
import { inch, planOf, tallCrib, trailerOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { analyze } from '../analysis/analyze.js';

const ref = { element: 'expect/1' };
const unmet = (plan: Plan, ...expectations: readonly Expectation[]) => {
  const analysis = analyze({ ...plan, expectations });
  expect(analysis.expectations.filter((e) => !e.held)).toHaveLength(
    analysis.findings.filter((f) => f.rule === 'expectation-unmet').length,
  );
  return analysis.expectations.filter((e) => !e.held).map((e) => `${english(e.text)}: ${english(e.why)}`);
};
const figure = (
  name: string,
  inches: number,
  change: Partial<Extract<Expectation, { kind: 'figure' }>> = {},
): Expectation => ({
  kind: 'figure',
  figure: name,
  on: 'crib/A',
  contact: undefined,
  value: exactly(inches * inch),
  within: 0,
  ref,
  ...change,
});

describe('expectation-unmet', () => {
  it('holds a safe plan safe, and an unsafe one not', () => {
    expect(unmet(planOf({}), { kind: 'safe', ref })).toEqual([]);
    expect(unmet(tallCrib, { kind: 'safe', ref })[0]).toContain('crib-height');
  });
  it('does not take a check that could not run for a pass', () => {
    const { ground } = trailerOnCar;
    const unknown = {
      ...trailerOnCar,
      ground: { ...ground, surface: { ...ground.surface, bearing: undefined } },
    };
    expect(unmet(unknown, { kind: 'safe', ref })).toHaveLength(1);
  });
  it('looks for a finding where it is expected', () => {
    expect(unmet(tallCrib, { kind: 'finding', rule: 'crib-height', on: 'crib/A', ref })).toEqual([]);
    expect(unmet(tallCrib, { kind: 'finding', rule: 'crib-height', on: undefined, ref })).toEqual([]);
    expect(unmet(tallCrib, { kind: 'finding', rule: 'crib-height', on: 'crib/B', ref })).toEqual([
      'crib-height on crib B: crib-height found nothing there',
    ]);
  });
  it('compares figures, within what is allowed', () => {
    expect(unmet(tallCrib, figure('height', 49), figure('height limit', 24))).toEqual([]);
    expect(unmet(tallCrib, figure('height', 45, { within: 0.1 }))).toEqual([]);
    expect(unmet(tallCrib, figure('height', 48))).toEqual(['height on crib A 48 in: height is 49 in']);
  });
  it('does not hold where the figure is not known', () =>
    expect(unmet(tallCrib, figure('angle', 1))).toEqual(['angle on crib A: crib A has no angle']));
});

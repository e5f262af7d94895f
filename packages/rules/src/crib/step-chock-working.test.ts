import { workingsOf } from '@cribwright/engine';
import type { StepChock } from '@cribwright/model';
import { foot, inch, lb, planOf, sedan } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { rule as load } from '../crib-load/rule.js';
import { rule as reach } from '../crib-reach/rule.js';
import { check } from '../testing/check.js';

/** The car's sills: 8 in up, 2.5 ft off its centerline, which lies at 25 ft. */
const chock = (change: Partial<StepChock> = {}): StepChock => ({
  kind: 'step chock',
  id: 'step chock/Z',
  name: 'Z',
  at: { x: 27.5 * foot, y: -6 * foot },
  heights: [4 * inch, 6 * inch, 7.5 * inch, 9 * inch],
  capacity: 8000 * lb,
  captures: [{ vehicle: sedan.id, part: 'sills', ref: { element: 'step chock/Z', property: 'captures' } }],
  standsOn: { kind: 'ground' },
  source: { kind: 'invented' },
  ref: { element: 'step chock/Z' },
  ...change,
});
const plan = (change: Partial<StepChock> = {}) => planOf({ vehicles: [sedan], stepChocks: [chock(change)] });
const working = (change: Partial<StepChock> = {}) => workingsOf(plan(change)).stepChocks()[0];

describe('step chock', () => {
  it('meets its part with the highest step that goes under', () => {
    expect((working()?.height.value?.low ?? 0) / inch).toBeCloseTo(7.5, 9);
    expect((working()?.gap.value?.high ?? 0) / inch).toBeCloseTo(0.5, 9);
  });
  it('counts the highest step that goes under wherever in its range the part is', () => {
    const sills = (p: (typeof sedan.parts)[number]) =>
      p.name === 'sills' ? { ...p, height: { low: 7 * inch, high: 9.5 * inch } } : p;
    const car = { ...sedan, parts: sedan.parts.map(sills) };
    const [found] = workingsOf(planOf({ vehicles: [car], stepChocks: [chock()] })).stepChocks();
    // 7.5 in goes under 9.5 in, and not under 7 in.
    expect((found?.height.value?.low ?? 0) / inch).toBeCloseTo(6, 9);
    expect((found?.gap.value?.low ?? 0) / inch).toBeCloseTo(1, 9);
    expect((found?.gap.value?.high ?? 0) / inch).toBeCloseTo(3.5, 9);
  });
  it('is one of the supports, and carries what comes to it', () => {
    const w = workingsOf(plan());
    expect(w.loads().get('step chock/Z')?.load.value?.high).toBeGreaterThanOrEqual(0);
  });
  it.each([
    [{}, undefined],
    [{ heights: [4 * inch] }, 'crib-reach.step-gap'],
    [{ heights: [12 * inch] }, 'crib-reach.step-none'],
    [{ at: { x: 26 * foot, y: -6 * foot } }, 'crib-reach.step-beside'],
  ])('reach of %o: %s', (change, id) => expect(check(reach, plan(change))[0]?.message.id).toBe(id));
  it('does not pass one that nobody rated once it carries', () => {
    const found = check(load, plan({ capacity: undefined }));
    const carried = workingsOf(plan()).loads().get('step chock/Z')?.load.value?.high ?? 0;
    expect(carried).toBeGreaterThan(0);
    expect(found.map((f) => f.couldNotRun)).toEqual([true]);
    expect(check(load, plan({ capacity: 8000 * lb }))).toEqual([]);
    expect(check(load, plan({ capacity: carried / 2 }))).toHaveLength(1);
  });
});

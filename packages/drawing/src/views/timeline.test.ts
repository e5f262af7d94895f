import { trailerOnCar as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { boundsOf } from '../scene/bounds.js';
import { drawn } from '../testing/drawn.js';

const analysis = analyze(plan);

it('gives each step a bar from its start to its end, one minute as long as another', () => {
  const view = drawn(plan, analysis, { view: 'timeline' });
  const perSecond = (analysis.timeline?.rows ?? []).map((row) => {
    const bar = boundsOf(view.shape(row.step, 'bar'));
    return (bar.right - bar.left) / (row.end.low - row.start.low);
  });
  expect(perSecond.length).toBe(plan.steps.length);
  for (const one of perSecond) expect(one).toBeCloseTo(perSecond[0] ?? Number.NaN, 6);
});

it('marks the step of the stage that is looked at', () => {
  const stage = analysis.stages.findIndex((s) => s.step === 'step/4');
  const view = drawn(plan, analysis, { view: 'timeline', stage });
  expect(view.group('step/4').items[0]?.key).toBe('now');
  expect(view.group('step/5').items[0]?.key).not.toBe('now');
});

it.each([60, 8 * 3600, 86_400, 200 * 86_400, 1e12])(
  'marks the time at no more than 13 places in %d s',
  (seconds) => {
    const steps = plan.steps.map((s) => ({ ...s, takes: { low: 0, high: seconds / plan.steps.length } }));
    const long = { ...plan, steps };
    const view = drawn(long, analyze(long), { view: 'timeline' });
    const marks = view.groups.filter((g) => /^minute \d/.test(g.key));
    expect(marks.length).toBeGreaterThan(1);
    expect(marks.length).toBeLessThanOrEqual(13);
  },
);

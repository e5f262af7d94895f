import { samplePlans } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { analyze } from './analyze.js';

const plans = Object.entries(samplePlans);
const loads = ['load', 'use', 'asBuilt', 'bound', 'crushing', 'pressure'];

it.each(plans)('says of %s before the loads what it says after, or nothing', (_, plan) => {
  const [before, after] = [analyze(plan, { loads: false }), analyze(plan)];
  expect(before.pending).toBe('loads');
  expect(after.pending).toBeUndefined();
  const rules = new Set(before.findings.map((f) => f.rule));
  for (const rule of rules)
    expect(before.findings.filter((f) => f.rule === rule)).toEqual(
      after.findings.filter((f) => f.rule === rule),
    );
  expect(before.findings.filter((f) => f.couldNotRun).length).toBeLessThanOrEqual(
    after.findings.filter((f) => f.couldNotRun).length,
  );
  for (const [i, { figures }] of after.supports.entries())
    expect(before.supports[i]?.figures).toEqual(
      Object.fromEntries(Object.entries(figures).filter(([key]) => !loads.includes(key))),
    );
});

it.each(plans)('holds no load, nor the word of one, of %s before the loads', (_, plan) => {
  const { supports, stages, ground, push, expectations } = analyze(plan, { loads: false });
  expect({ stages, ground, push, expectations }).toEqual({
    stages: [],
    ground: [],
    push: undefined,
    expectations: [],
  });
  for (const { figures, contacts } of supports) {
    for (const key of loads) expect(figures).not.toHaveProperty(key);
    for (const { load, use } of contacts) expect([load, use]).toEqual([undefined, undefined]);
  }
});

it('speaks of heights before the loads, and of what carries too much after', () => {
  const spoken = (options: Parameters<typeof analyze>[1]) =>
    new Set(plans.flatMap(([, plan]) => analyze(plan, options).findings.map((f) => f.rule)));
  const [early, all] = [spoken({ loads: false }), spoken({})];
  expect([...early]).toContain('crib-height');
  expect([...all].filter((rule) => !early.has(rule)).sort()).toEqual([
    'air-spring-free',
    'ground-bearing',
    'loss-of-support',
    'part-load',
  ]);
});

import { workingsOf } from '@cribwright/engine';
import { term } from '@cribwright/messages';
import { english } from '@cribwright/messages/testing';
import { hastyTrailer, planOf, samplePlans } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import type { Rule } from '../definition/rule.js';
import { rules } from '../generated/rule-index.js';
import { analyze } from './analyze.js';
import { runRules } from './run.js';

const broken: Rule = {
  id: 'broken',
  title: term('crib-height.title'),
  family: 'whole system',
  severity: 'note',
  judges: 'plan',
  protects: term('crib-height.protects'),
  sources: [],
  compares: [],
  check: () => {
    throw new Error('broken');
  },
};

it('turns a rule that breaks into a loud finding, and runs the others', () => {
  const w = workingsOf(hastyTrailer);
  const found = runRules([broken, ...rules], w);
  expect(found[0]).toMatchObject({ rule: 'broken', severity: 'danger', couldNotRun: true });
  expect(english(found[0]?.message)).toMatch(
    /^The check broken could not run on this plan\. What it protects/,
  );
  expect(found.slice(1)).toEqual(runRules(rules, w));
  expect(found.length).toBeGreaterThan(5);
});

it.each(Object.entries(samplePlans))('analyzes %s into plain data', (_, plan) => {
  const analysis = analyze(plan);
  expect(JSON.parse(JSON.stringify(analysis))).toEqual(JSON.parse(JSON.stringify(analyze(plan))));
  expect(analysis.supports).toHaveLength(
    plan.cribs.length + plan.struts.length + plan.ties.length + plan.chocks.length,
  );
  expect(JSON.stringify(analysis)).not.toMatch(/NaN|Infinity/);
});

it('analyzes a plan with nothing in it', () =>
  expect(analyze(planOf({})).findings.filter((f) => f.couldNotRun)).toEqual([]));

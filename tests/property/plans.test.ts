import { analyze } from '@cribwright/rules';
import { describe, expect, it } from 'vitest';
import { oddPlans } from './any-plan.js';
import { faults } from './faults.js';
import { properties } from './properties.js';

describe('random plans', () => {
  it.each(Object.entries(properties))('%s', async (_, property) => {
    expect(await property()).toMatch(/^\d+ /);
  });
});

describe('plans at the edge of sense', () => {
  it.each(Object.entries(oddPlans))('%s', (_, plan) => {
    expect(faults(plan, analyze(plan, { push: true }))).toEqual([]);
  });
});

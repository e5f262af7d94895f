import { unchecked } from '@cribwright/engine';
import { samplePlans } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { analyze } from './analyze.js';

it.each(Object.entries(samplePlans))(
  'names what %s has, and says that nothing of it was checked',
  (_, plan) => {
    const [before, after] = [unchecked(plan), analyze(plan)];
    expect(before.unchecked).toBe(true);
    expect(after.unchecked).toBeUndefined();
    const named = ({ supports }: typeof before) => supports.map(({ id, name, kind }) => ({ id, name, kind }));
    expect(named(before)).toEqual(named(after));
    expect(before.bodies).toEqual(after.bodies);
    const built = ({ stages }: typeof before) =>
      stages.map(({ id, title, step, standing, adding }) => ({ id, title, step, standing, adding }));
    expect(built(before)).toEqual(built(after));
  },
);

it.each(Object.entries(samplePlans))('holds no number of %s that only a check can give', (_, plan) => {
  const { supports, stages, ground, push, timeline, materials, findings } = unchecked(plan);
  expect({ ground, push, timeline, materials, findings }).toEqual({
    ground: [],
    push: undefined,
    timeline: undefined,
    materials: undefined,
    findings: [],
  });
  for (const { figures, contacts, worst } of supports)
    expect({ figures, contacts, worst }).toEqual({ figures: {}, contacts: [], worst: undefined });
  for (const { asBuilt, losses } of stages) {
    expect(asBuilt).toMatchObject({ rests: false, reactions: [] });
    expect(losses).toEqual([]);
  }
});

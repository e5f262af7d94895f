import { trailerOnCar as plan } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';
import { drawn } from '../testing/drawn.js';

it('shows in broken lines what stands behind a body, and only that', () => {
  const { groups, shape, words } = drawn(plan, analyze(plan), { view: '3d' });
  const far = plan.cribs.filter((c) => c.at.y > 0.5).map((c) => `hidden ${c.id}`);
  const near = plan.cribs.filter((c) => c.at.y < -0.5).map((c) => `hidden ${c.id}`);
  expect(far.length * near.length).toBeGreaterThan(0);
  for (const key of far) expect(shape(key, 'outline')).toMatchObject({ fill: 'none', dash: 'dashed' });
  expect(groups.filter((g) => near.includes(g.key))).toEqual([]);
  expect(words()).toEqual(expect.arrayContaining(['hidden behind', 'FRONT']));
});

it('carries what stands in space, stage by stage, for a view that can be turned', () => {
  const analysis = analyze(plan);
  const first = drawn(plan, analysis, { view: '3d', stage: 0 }).scene.space;
  const last = drawn(plan, analysis, { view: '3d' }).scene.space;
  const standing = (space: typeof last, id: string) =>
    space?.things.find((t) => t.ref.element === id)?.standing;
  expect(standing(first, 'crib/A')).toBe('later');
  expect(standing(last, 'crib/A')).toBe('stands');
  expect(last?.things.map((t) => t.ref.element)).toEqual(
    expect.arrayContaining(['vehicle/trailer', 'strut/S4', 'tie/T2']),
  );
  expect(structuredClone(last)).toEqual(last);
});

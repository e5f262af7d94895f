import { analyze } from '@cribwright/engine';
import { trailerOnCar as plan } from '@cribwright/engine/testing';
import { expect, it } from 'vitest';
import { drawn } from '../testing/drawn.js';

it('carries what stands in space, stage by stage, for a view that can be turned', () => {
  const analysis = analyze(plan);
  const first = drawn(plan, analysis, { view: 'space', stage: 0 }).scene.space;
  const last = drawn(plan, analysis, { view: 'space' }).scene.space;
  const standing = (space: typeof last, id: string) =>
    space?.things.find((t) => t.ref.element === id)?.standing;
  expect(standing(first, 'crib/A')).toBe('later');
  expect(standing(last, 'crib/A')).toBe('stands');
  expect(last?.things.map((t) => t.ref.element)).toEqual(
    expect.arrayContaining(['vehicle/trailer', 'strut/S4', 'tie/T2']),
  );
  expect(structuredClone(last)).toEqual(last);
});

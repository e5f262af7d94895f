import { type Crib, type Plan, place } from '@cribwright/model';
import { airSprungCab, crib, planOf, trailerOnCar } from '@cribwright/model/testing';
import { inch } from '@cribwright/units';
import { expect, it } from 'vitest';
import { cribSolids } from './crib-solids.js';
import { pointsOf } from './project.js';

const solidsOf = (c: Crib, vehicles: Plan['vehicles'] = trailerOnCar.vehicles) =>
  place(planOf({ vehicles, cribs: [c] })).cribs.all.flatMap(cribSolids);

it('fills the room it says: 24 in square, from the ground to the captured part', () => {
  const points = solidsOf(crib('A', 5, -1)).flatMap(pointsOf);
  const span = (axis: 'x' | 'y' | 'z') =>
    Math.max(...points.map((p) => p[axis])) - Math.min(...points.map((p) => p[axis]));
  expect(span('x') / inch).toBeCloseTo(24, 6);
  expect(span('y') / inch).toBeCloseTo(24, 6);
  expect(span('z') / inch).toBeCloseTo(40, 6);
});

it('draws no wedge where the gap is wider than wedges close', () => {
  expect(solidsOf(crib('A', 5, -1)).some((s) => s.tone === 'wedge')).toBe(true);
  expect(solidsOf(crib('A', 5, -1, { courses: 8 })).some((s) => s.tone === 'wedge')).toBe(false);
  expect(solidsOf(crib('A', 5, -1, { courses: 14 })).some((s) => s.tone === 'wedge')).toBe(false);
});

it('stands on what it stands on: the frame of a tractor, 40 in up', () => {
  const [stands] = airSprungCab.cribs;
  if (stands === undefined) throw new Error('no crib on a frame');
  const heights = solidsOf(stands, airSprungCab.vehicles).flatMap((s) => pointsOf(s).map((p) => p.z));
  expect(Math.min(...heights) / inch).toBeCloseTo(40, 9);
});

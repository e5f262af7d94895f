import type { Plan, VehiclePosition } from '@cribwright/model';
import { asphalt, degree, foot, lb, planOf, sedan } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { workingsOf } from '../derived/workings.js';

// A car of 3,400 lb, 1,700 lb at each axle 9 ft apart, its center of gravity 2 ft high, its tracks 5 ft apart.
const weight = 3400 * lb;
const car = {
  ...sedan,
  at: { x: 0, y: 0 },
  heading: 0,
  emptyCenterHeight: { low: 2 * foot, high: 2 * foot },
  axles: sedan.axles.map((a) => ({ ...a, emptyLoad: { low: weight / 2, high: weight / 2 } })),
};
const loads = (change: Partial<Plan>, position: VehiclePosition = { kind: 'upright' }) => {
  const plan = planOf({ vehicles: [{ ...car, position }], ...change });
  const reactions = workingsOf(plan).stages().at(-1)?.asBuilt.reactions ?? [];
  const of = (word: string) =>
    reactions.filter((r) => r.id.includes(word)).reduce((sum, r) => sum + r.load.high, 0);
  return { front: of('axle 1'), rear: of('axle 2'), driver: of('/driver'), passenger: of('/passenger') };
};
const ground = (grade: number, toward: Plan['ground']['toward']) => ({
  ground: { ...asphalt, grade, toward },
});

// Moments about the ground between the wheels, by hand: what is downhill carries W × height × grade ÷ distance more.
describe('what carries a vehicle on a grade', () => {
  it('carries more downhill, lengthwise', () => {
    const { front, rear } = loads(ground(0.15, 'rear'));
    const more = (weight * 2 * 0.15) / 9;
    expect(rear).toBeCloseTo(weight / 2 + more, 3);
    expect(front).toBeCloseTo(weight / 2 - more, 3);
  });

  it('carries more downhill, sideways', () => {
    const { driver, passenger } = loads(ground(0.15, 'driver side'));
    const more = (weight * 2 * 0.15) / 5;
    expect(driver).toBeCloseTo(weight / 2 + more, 3);
    expect(passenger).toBeCloseTo(weight / 2 - more, 3);
  });

  it('knows downhill for a vehicle that stands across', () => {
    const across = { ...car, heading: -Math.PI / 2 };
    // Its front points to the passenger side, so that its rear is toward the driver side.
    const { rear } = loads({ vehicles: [across], ...ground(0.15, 'driver side') });
    expect(rear).toBeCloseTo(weight / 2 + (weight * 2 * 0.15) / 9, 3);
  });

  it('tips it where its weight comes down outside the wheels', () => {
    const steep = planOf({ vehicles: [car], ...ground(1.3, 'driver side') });
    expect(workingsOf(steep).stages().at(-1)?.asBuilt.rests).toBe(false);
  });
});

it('leans a vehicle that pitches toward the end that is down', () => {
  const angle = 15 * degree;
  const more = (weight * 2 * Math.tan(angle)) / 9;
  expect(loads({}, { kind: 'pitched', angle }).front).toBeCloseTo(weight / 2 + more, 3);
  expect(loads({}, { kind: 'pitched', angle: -angle }).rear).toBeCloseTo(weight / 2 + more, 3);
});

it('takes the height of a center of gravity that nobody knows for anything from the ground to the roof', () => {
  const blind = { ...car, emptyCenterHeight: undefined };
  const { rear } = loads({ vehicles: [blind], ...ground(0.15, 'rear') });
  expect(rear).toBeCloseTo(weight / 2 + (weight * (car.height / foot) * 0.15) / 9, 3);
});

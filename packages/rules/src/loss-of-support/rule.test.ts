import { english } from '@cribwright/messages/testing';
import type { Plan } from '@cribwright/model';
import { inch, lb, policyWith, trailerOnCar, truckOnCar } from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

/** The truck has lost its driver-side rear wheels: there the car alone holds it. */
const onTheCar: Plan = {
  ...truckOnCar,
  vehicles: truckOnCar.vehicles.map((v) =>
    v.name === 'truck'
      ? { ...v, axles: v.axles.map((a) => (a.id === 'axle 2' ? { ...a, missing: ['driver'] as const } : a)) }
      : v,
  ),
  contacts: truckOnCar.contacts.map((c) => ({ ...c, stiffness: (5000 * lb) / inch })),
};

describe('loss-of-support', () => {
  it('passes a truck whose cribs take over from the car', () => {
    expect(check(rule, onTheCar).filter((f) => f.severity === 'danger')).toEqual([]);
  });

  it('is a danger without them: the car gives way and nothing holds that corner', () => {
    const found = check(rule, { ...onTheCar, cribs: [] }).filter((f) => f.severity === 'danger');
    expect(found).toHaveLength(1);
    expect(found[0]?.subject).toEqual({ element: 'vehicle/truck' });
    expect(english(found[0]?.message)).toMatch(
      /^Support lost: car gives way\. Nothing holds the rear corner on the driver side of the truck with /,
    );
    expect(found[0]?.related[0]?.at).toEqual({ element: 'vehicle/car' });
  });

  it('warns of tires, which let the truck down onto its rims', () => {
    const found = check(rule, { ...truckOnCar, cribs: [] });
    expect(found.length).toBeGreaterThan(0);
    expect(found.map((f) => f.severity)).toEqual(found.map(() => 'warning'));
    expect(english(found[0]?.message)).toContain('truck axle 2, passenger side: tire lost');
  });

  it('finds nothing on the trailer held all round', () => {
    expect(check(rule, trailerOnCar)).toEqual([]);
  });

  it('loses the ground under the one crib that holds a corner, where the policy says that it may give way', () => {
    const onOneCrib: Plan = {
      ...onTheCar,
      vehicles: onTheCar.vehicles.filter((v) => v.name === 'truck'),
      contacts: [],
      cribs: onTheCar.cribs.filter((c) => c.name === 'C'),
    };
    const dangers = (plan: Plan) => check(rule, plan).filter((f) => f.severity === 'danger');
    expect(dangers(onOneCrib)).toEqual([]);
    const [found, ...others] = dangers({
      ...onOneCrib,
      policy: policyWith('ground under cribs', 'may give way'),
    });
    expect(others).toEqual([]);
    expect(english(found?.message)).toMatch(
      /^Support lost: ground gives way under crib C\. Nothing holds the rear corner on the driver side/,
    );
    expect(found?.related[0]?.at).toEqual({ element: 'crib/C', property: 'stands on' });
  });
});

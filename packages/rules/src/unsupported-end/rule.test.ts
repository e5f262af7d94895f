import { english } from '@cribwright/messages/testing';
import type { Plan, Vehicle } from '@cribwright/model';
import { between, exactly } from '@cribwright/model';
import {
  crib,
  foot,
  inch,
  lb,
  planOf,
  samplePlans,
  trailerOnCar,
  vanTrailer,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

/** The trailer with no tractor under its kingpin. */
const dropped: Vehicle = {
  ...vanTrailer,
  parts: vanTrailer.parts.map((p) =>
    p.id === 'kingpin' && p.carries !== undefined ? { ...p, carries: { ...p.carries, down: false } } : p,
  ),
};
const side = 42.75 * inch;

describe('unsupported-end', () => {
  it.each(Object.entries(samplePlans))('finds all ends held in %s', (_name, plan) => {
    expect(check(rule, plan)).toEqual([]);
  });

  it('names the end that nothing holds', () => {
    const [found, ...more] = check(rule, planOf({ vehicles: [dropped] }));
    expect(more).toEqual([]);
    expect(found?.severity).toBe('danger');
    expect(found?.subject).toEqual({ element: 'vehicle/trailer' });
    expect(english(found?.message)).toBe(
      'Nothing holds the front of the trailer with trailer lightest, center farthest to its front, to the driver side. Put a support under it.',
    );
  });

  it('is content once cribs hold the front, and says that as found nothing did', () => {
    const cribs = [crib('A', 12 * foot, -side), crib('B', 12 * foot, side)];
    const [found, ...more] = check(rule, planOf({ vehicles: [dropped], cribs }));
    expect(more).toEqual([]);
    expect(found?.severity).toBe('warning');
    expect(english(found?.message)).toContain('As found, nothing in the plan holds the front of the trailer');
  });

  it('does not take a single crib on the centerline for a hold on both sides', () => {
    const axles = vanTrailer.axles.map((a) => ({ ...a, missing: ['driver', 'passenger'] as const }));
    const still = { ...dropped, axles, cargo: [] };
    const found = check(
      rule,
      planOf({
        vehicles: [
          { ...still, statedWeight: { low: 40_000 * lb, high: 40_000 * lb }, statedCenter: at(20 * foot) },
        ],
        cribs: [crib('A', 20 * foot, -side)],
      }),
    );
    expect(found.map((f) => f.severity)).toContain('danger');
  });

  it('says loudly that it knows nothing where the weight is not known', () => {
    const blind = { ...vanTrailer, axles: [], parts: [], cargo: [] };
    const found = check(rule, { ...trailerOnCar, vehicles: [blind, ...trailerOnCar.vehicles.slice(1)] });
    expect(found.some((f) => f.couldNotRun === true && english(f.message).includes('not known'))).toBe(true);
  });

  it('says so where not every mix of many ranges could be tried', () => {
    const ranged = (v: Vehicle, id: string): Vehicle => ({
      ...v,
      id,
      statedWeight: between(3000 * lb, 3500 * lb),
      statedCenter: { x: between(6 * foot, 7 * foot), y: between(-1 * inch, 1 * inch), z: exactly(2 * foot) },
    });
    const under = (count: number): Plan => {
      const [trailer, car] = trailerOnCar.vehicles;
      const [contact] = trailerOnCar.contacts;
      if (trailer === undefined || car === undefined || contact === undefined) throw new Error('no sample');
      const ids = Array.from({ length: count }, (_, i) => `vehicle/car${i}`);
      return {
        ...trailerOnCar,
        vehicles: [trailer, ...ids.map((id) => ranged(car, id))],
        contacts: ids.map((id) => ({ ...contact, id: `contact/${id}`, lower: id })),
      };
    };
    const said = (plan: Plan) => check(rule, plan).filter((f) => f.message.id === 'unsupported-end.mixes');
    // The trailer has 8 ends and each car 8: 64, and 512.
    expect(said(under(1))).toEqual([]);
    const [found] = said(under(2));
    expect(found).toMatchObject({ severity: 'warning', couldNotRun: true });
    expect(english(found?.message)).toContain('Not every combination was tried');
  });
});

function at(x: number) {
  return { x: { low: x, high: x }, y: { low: 0, high: 0 }, z: { low: 2, high: 2 } };
}

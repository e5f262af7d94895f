import { english } from '@cribwright/messages/testing';
import type { Vehicle } from '@cribwright/model';
import { exactly } from '@cribwright/model';
import {
  bearsOn,
  crib,
  foot,
  inch,
  planOf,
  sedan,
  strut,
  tractor,
  trailerOnCar,
  truckOnCar,
  vanTrailer,
} from '@cribwright/model/testing';
import { describe, expect, it } from 'vitest';
import { check } from '../testing/check.js';
import { rule } from './rule.js';

const side = -42.75 * inch;
const ids = (...given: Parameters<typeof planOf>) => check(rule, planOf(...given)).map((f) => f.message.id);

describe('crib-clash', () => {
  it('passes the samples', () => {
    expect(check(rule, trailerOnCar)).toEqual([]);
    expect(check(rule, truckOnCar)).toEqual([]);
  });
  it('lets cribs touch and not run into each other', () => {
    expect(ids({ cribs: [crib('A', 2, 0), crib('B', 2 + 24 * inch, 0)] })).toEqual([]);
    const [finding] = check(rule, planOf({ cribs: [crib('A', 2, 0), crib('B', 2 + 20 * inch, 0)] }));
    expect(english(finding?.message)).toContain('crib A and crib B overlap by 4 in');
  });
  it('finds a crib for the trailer where the car is', () =>
    expect(ids({ vehicles: [vanTrailer, sedan], cribs: [crib('A', 23 * foot, side)] })).toEqual([
      'crib-clash.body',
    ]));
  it('finds a crib among the wheels', () =>
    expect(ids({ vehicles: [vanTrailer], cribs: [crib('A', 46.5 * foot, -36 * inch)] })).toEqual([
      'crib-clash.wheels',
    ]));
  it('finds a strut that runs through a crib', () =>
    expect(
      ids({
        vehicles: [vanTrailer],
        cribs: [crib('A', 14 * foot, -70 * inch)],
        struts: [strut('S1', 14 * foot, -49 * inch, -87 * inch)],
      }),
    ).toEqual(['crib-clash.strut-through']));
});

describe('crib-clash, of two vehicles', () => {
  const other = (change: Partial<Vehicle>): Vehicle => ({
    ...vanTrailer,
    id: 'vehicle/other',
    name: 'other',
    axles: [],
    ...change,
  });
  /** A car that stands lengthwise under the trailer, its middle 25 ft back, its roof as it was built or crushed. */
  const car = (roof: number, at = { x: 20 * foot, y: 0 }): Vehicle => ({
    ...sedan,
    heading: 0,
    at,
    parts: sedan.parts.map((p) => (p.id === 'roof' ? { ...p, height: exactly(roof) } : p)),
  });

  it('finds two trailers in the same place, in either order, and by how much', () => {
    // Widths of 102 in, side by side at 90 in: 12 in.
    const beside = other({ at: { x: 0, y: 90 * inch } });
    const [finding] = check(rule, planOf({ vehicles: [vanTrailer, beside] }));
    expect(finding?.severity).toBe('danger');
    expect(english(finding?.message)).toContain(
      'The other and the trailer are in the same place: they overlap by 12 in.',
    );
    expect(ids({ vehicles: [beside, vanTrailer] })).toEqual(['crib-clash.vehicles']);
    expect(ids({ vehicles: [vanTrailer, other({ at: { x: 0, y: -90 * inch } })] })).toEqual([
      'crib-clash.vehicles',
    ]);
  });

  it('passes two that only touch, or stand apart, or one above the other', () => {
    expect(ids({ vehicles: [vanTrailer, other({ at: { x: 0, y: 102 * inch } })] })).toEqual([]);
    expect(ids({ vehicles: [vanTrailer, other({ at: { x: 54 * foot, y: 0 } })] })).toEqual([]);
    expect(ids({ vehicles: [vanTrailer, car(40 * inch)] })).toEqual([]);
  });

  it('finds a car whose roof, as it was built, is in the floor of the trailer', () =>
    expect(ids({ vehicles: [vanTrailer, car(57 * inch)] })).toEqual(['crib-clash.vehicles']));

  it('warns where only a hood may be under a floor: nothing says how high it is', () => {
    // The roof of the car runs from 4 ft to 9 ft: with its front 3 ft under the rear of the trailer only the hood is there.
    const plan = planOf({ vehicles: [vanTrailer, car(57 * inch, { x: 50 * foot, y: 0 })] });
    const bare = {
      ...plan,
      vehicles: plan.vehicles.map((v) => (v.id === vanTrailer.id ? { ...v, axles: [] } : v)),
    };
    expect(check(rule, bare).map((f) => [f.message.id, f.severity])).toEqual([
      ['crib-clash.vehicles-maybe', 'warning'],
    ]);
  });

  it('excepts bodies that the plan says bear on each other', () =>
    expect(
      ids({
        vehicles: [vanTrailer, car(57 * inch)],
        contacts: [bearsOn('car', 'trailer', 25 * foot, 0)],
      }),
    ).toEqual([]));

  it('finds wheels in the same place, whatever the plan says of the bodies', () => {
    // The trailer's axles are at 46 ft 6 in and 50 ft 6 in, the car's rear axle 12 ft back from its front; tracks 6 ft and 5 ft.
    const plan = {
      vehicles: [vanTrailer, car(40 * inch, { x: 38.5 * foot, y: 0 })],
      contacts: [bearsOn('car', 'trailer', 44 * foot, 0)],
    };
    expect(ids(plan)).toEqual(['crib-clash.vehicle-wheels']);
    expect(ids({ ...plan, vehicles: plan.vehicles.toReversed() })).toEqual(['crib-clash.vehicle-wheels']);
  });

  it('finds a car among the wheels of the trailer that bears on it', () =>
    expect(
      ids({
        vehicles: [vanTrailer, car(40 * inch, { x: 41 * foot, y: 0 })],
        contacts: [bearsOn('car', 'trailer', 44 * foot, 0)],
      }),
    ).toEqual(['crib-clash.vehicles']));

  it('passes a tractor coupled under its trailer', () => {
    const coupled = { ...bearsOn('tractor', 'trailer', 3 * foot, 0), coupled: true };
    const plan = { vehicles: [vanTrailer, { ...tractor, at: { x: -17 * foot, y: 0 } }] };
    expect(ids({ ...plan, contacts: [coupled] })).toEqual([]);
    expect(ids(plan)).toEqual(['crib-clash.vehicles']);
  });
});

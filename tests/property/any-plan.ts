import type {
  Cargo,
  Crib,
  Interval,
  Plan,
  Strut,
  Timber,
  Vehicle,
  VehicleContact,
  VehiclePosition,
} from '@cribwright/model';
import {
  airSprungCab,
  crib,
  degree,
  fir4x4,
  fir6x6,
  hastyTrailer,
  longStrut,
  planOf,
  samplePlans,
  shortCribs,
  strap,
  strut,
  tallCrib,
  trailerOnCar,
  truckOnCar,
} from '@cribwright/model/testing';
import { foot, inch } from '@cribwright/units';
import { lb } from '@cribwright/units/internal';
import fc from 'fast-check';

/** Picks one value from an arbitrary; every pick is part of what a failing case is shrunk by. */
type Pick = fc.GeneratorValue;

const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const whole = (low: number, high: number) => fc.integer({ min: low, max: high });
const pick = <const T>(...options: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...options);
const sometimes = (one: number, of: number) => fc.nat(of - 1).map((n) => n < one);

/** A range, exact more often than not. */
const interval = (low: number, high: number): fc.Arbitrary<Interval> =>
  fc.oneof(
    { weight: 3, arbitrary: number(low, high).map((a) => ({ low: a, high: a })) },
    {
      weight: 2,
      arbitrary: fc
        .tuple(number(low, high), number(low, high))
        .map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) })),
    },
  );

const suspension = () => pick('air', 'spring', 'rigid');
const crossBase = () => pick('open', 'solid');
const topRuns = () => pick('lengthwise', 'crosswise');
const lock = () => pick('pinned', 'collar', 'pump only', undefined);
const display = () => pick('us', 'si');
const downhill = () => pick('front', 'rear', 'driver side', 'passenger side');

const position: fc.Arbitrary<VehiclePosition> = fc.oneof(
  { weight: 6, arbitrary: fc.constant<VehiclePosition>({ kind: 'upright' }) },
  { weight: 1, arbitrary: number(-0.5, 0.5).map((angle): VehiclePosition => ({ kind: 'pitched', angle })) },
  {
    weight: 1,
    arbitrary: fc
      .constantFrom('driver' as const, 'passenger' as const)
      .map((side): VehiclePosition => ({ kind: 'on its side', side })),
  },
  { weight: 1, arbitrary: fc.constant<VehiclePosition>({ kind: 'on its roof' }) },
);

const anyPosition = () => position;

function cargo(g: Pick, vehicle: Vehicle, index: number): Cargo {
  const from = g(number, 0, vehicle.length);
  const to = g(number, 0, vehicle.length);
  return {
    id: `cargo ${index}`,
    name: `load ${index}`,
    weight: g(interval, lb, 60_000 * lb),
    from: Math.min(from, to),
    to: Math.max(from, to),
    ...(g(sometimes, 1, 2) ? { center: g(interval, Math.min(from, to), Math.max(from, to)) } : {}),
    offset: g(interval, -2 * foot, 2 * foot),
    height: g(sometimes, 5, 6) ? g(interval, 3 * foot, 10 * foot) : undefined,
    shifts: g(fc.boolean),
    ref: { element: vehicle.id, property: 'cargo' },
  };
}

function vehicle(g: Pick, from: Vehicle): Vehicle {
  const changed: Vehicle = {
    ...from,
    at: g(sometimes, 1, 4)
      ? { x: g(number, -60 * foot, 60 * foot), y: g(number, -20 * foot, 20 * foot) }
      : from.at,
    heading: g(sometimes, 1, 4) ? g(number, -Math.PI, Math.PI) : from.heading,
    position: g(anyPosition),
    emptyCenterHeight: g(sometimes, 5, 6) ? from.emptyCenterHeight : undefined,
    cargo: Array.from({ length: g(whole, 0, 3) }, (_, i) => cargo(g, from, i)),
    axles: from.axles
      .filter(() => g(sometimes, 9, 10))
      .map((axle) => ({
        ...axle,
        emptyLoad: g(sometimes, 1, 3) ? g(interval, 500 * lb, 30_000 * lb) : axle.emptyLoad,
        stiffness: g(sometimes, 1, 5) ? 10 ** g(number, 1, 8) : axle.stiffness,
        suspension: g(suspension),
        missing: g(sometimes, 1, 8) ? (['driver'] as const) : axle.missing,
      })),
    parts: from.parts
      .filter(() => g(sometimes, 14, 15))
      .map((part) => ({
        ...part,
        height: g(sometimes, 1, 6) ? g(interval, 0, 60 * inch) : part.height,
        mayBear: g(sometimes, 9, 10) ? part.mayBear : !part.mayBear,
      })),
    brakesSet: g(pick<boolean | undefined>, true, false, undefined),
  };
  return g(sometimes, 1, 6) ? { ...changed, statedWeight: g(interval, 1000 * lb, 80_000 * lb) } : changed;
}

function timber(g: Pick): Timber {
  const base = g(pick<Timber>, fir4x4, fir6x6);
  return {
    ...base,
    length: g(number, 6 * inch, 60 * inch),
    wet: g(fc.boolean),
    modulusAcross: g(sometimes, 1, 5) ? 10 ** g(number, 6, 10) : base.modulusAcross,
  };
}

function changedCrib(g: Pick, from: Crib): Crib {
  return {
    ...from,
    timber: g(sometimes, 1, 3) ? timber(g) : from.timber,
    layout: g(sometimes, 1, 3) ? { lengthwise: g(whole, 1, 6), crosswise: g(whole, 1, 6) } : from.layout,
    base: g(crossBase),
    top: g(topRuns),
    courses: g(sometimes, 1, 2) ? g(whole, 0, 25) : from.courses,
    overhang: g(sometimes, 1, 3) ? g(number, 0, 14 * inch) : from.overhang,
    wedges: g(sometimes, 1, 4)
      ? undefined
      : { pairs: g(whole, 0, 4), travel: g(interval, 0, 3 * inch), preload: g(number, 0, 3000 * lb) },
    shims: g(sometimes, 1, 5) ? g(number, 0, 3 * inch) : from.shims,
    at: g(sometimes, 1, 2)
      ? { x: from.at.x + g(number, -4 * foot, 4 * foot), y: from.at.y + g(number, -foot, foot) }
      : from.at,
    captures: from.captures
      .filter(() => g(sometimes, 5, 6))
      .map((c) => (g(sometimes, 1, 12) ? { ...c, part: 'no such part' } : c)),
  };
}

function changedStrut(g: Pick, from: Strut): Strut {
  return {
    ...from,
    gear: g(sometimes, 1, 4)
      ? { kind: 'timber post', name: 'post', timber: timber(g), plies: g(whole, 1, 4), ref: from.gear.ref }
      : longStrut,
    head: {
      ...from.head,
      x: from.head.x + g(number, -3 * foot, 3 * foot),
      z: g(interval, 0, 8 * foot),
      vehicle: g(sometimes, 1, 15) ? 'vehicle/none' : from.head.vehicle,
    },
    foot: {
      ...from.foot,
      x: from.foot.x + g(number, -3 * foot, 3 * foot),
      y: g(number, -12 * foot, 12 * foot),
    },
    statedAngle: g(sometimes, 1, 4) ? g(number, 0, 90 * degree) : undefined,
    lock: g(lock),
    preload: g(sometimes, 1, 3) ? g(number, 0, 2000 * lb) : 0,
  };
}

const contact = (g: Pick, from: VehicleContact): VehicleContact => ({
  ...from,
  points: from.points.map((p) => ({ x: p.x + g(number, -foot, foot), y: p.y })),
  stiffness: 10 ** g(number, 3, 8),
  coupled: g(fc.boolean),
});

const bases = [trailerOnCar, truckOnCar, airSprungCab, tallCrib, hastyTrailer, shortCribs] as const;

/** A plan such as people write, right or wrong: a sample with everything in it moved, changed, or left out. */
export const anyPlan: fc.Arbitrary<Plan> = fc.gen().map((g) => {
  const base = g(pick<Plan>, ...bases);
  const keep = <T>(list: readonly T[]): readonly T[] => list.filter(() => g(sometimes, 7, 8));
  return {
    ...base,
    display: g(display),
    ground: {
      ...base.ground,
      grade: g(sometimes, 1, 2) ? g(number, 0, 0.3) : 0,
      toward: g(downhill),
      surface: {
        ...base.ground.surface,
        bearing: g(sometimes, 1, 5) ? undefined : g(number, 1e4, 1e7),
        frictionTire: g(interval, 0, 1),
        frictionTimber: g(interval, 0, 1),
        frictionBody: g(sometimes, 1, 2) ? g(interval, 0, 1) : undefined,
      },
    },
    vehicles: base.vehicles.map((v) => vehicle(g, v)),
    contacts: keep(base.contacts).map((c) => contact(g, c)),
    cribs: keep(base.cribs).map((c) => changedCrib(g, c)),
    struts: keep(base.struts).map((s) => changedStrut(g, s)),
    ties: keep(base.ties).map((t) => ({
      ...t,
      gear: { ...t.gear, rating: g(sometimes, 1, 4) ? undefined : t.gear.rating },
      pretension: g(number, 0, 500 * lb),
    })),
    chocks: keep(base.chocks),
    steps: keep(base.steps).map((s) => ({
      ...s,
      crew: g(pick<number | undefined>, 1, 2, 9, undefined),
      takes: g(sometimes, 1, 5) ? undefined : s.takes,
      after: g(sometimes, 1, 6) ? [`step/${g(whole, 0, 12)}`] : s.after,
    })),
    crews: keep(base.crews),
    egress: keep(base.egress),
    sizeUp: keep(base.sizeUp),
    lifts: g(sometimes, 1, 6),
    toolLoads: g(sometimes, 1, 4)
      ? [
          {
            id: 'load/spreader',
            name: 'spreader',
            on: base.vehicles[0]?.id ?? 'vehicle/none',
            at: { x: g(number, 0, 50 * foot), y: g(number, -4 * foot, 4 * foot), z: g(number, 0, 10 * foot) },
            force: g(interval, 0, 20_000 * lb),
            direction: { x: g(number, -1, 1), y: g(number, -1, 1), z: g(number, -1, 1) },
            ref: { element: 'load/spreader' },
          },
        ]
      : [],
  };
});

/** Plans at the edge of sense: nothing in them, one of each, names that lead nowhere. */
export const oddPlans: Readonly<Record<string, Plan>> = {
  empty: planOf({}),
  'no vehicles': planOf({ cribs: trailerOnCar.cribs, struts: trailerOnCar.struts, ties: trailerOnCar.ties }),
  'no supports': planOf({ vehicles: trailerOnCar.vehicles }),
  'a vehicle without axles or parts': planOf({
    vehicles: trailerOnCar.vehicles.map((v) => ({ ...v, axles: [], parts: [], cargo: [] })),
    cribs: trailerOnCar.cribs,
  }),
  'a vehicle twice': planOf({ vehicles: [...trailerOnCar.vehicles, ...trailerOnCar.vehicles] }),
  'a crib of no courses': planOf({
    vehicles: trailerOnCar.vehicles,
    cribs: [crib('A', 19 * foot, 0, { courses: 0 })],
  }),
  'overhangs longer than the timber': planOf({
    vehicles: trailerOnCar.vehicles,
    cribs: [crib('A', 19 * foot, 0, { overhang: 20 * inch })],
  }),
  'a strut of no length': planOf({
    vehicles: trailerOnCar.vehicles,
    struts: [strut('S1', 0, 0, 0, { head: { ...strut('S1', 0, 0, 0).head, z: { low: 0, high: 0 } } })],
  }),
  'a tie from a strut to itself': planOf({
    vehicles: trailerOnCar.vehicles,
    struts: trailerOnCar.struts,
    ties: [strap('T1', 'S1', 'S1'), strap('T2', 'nobody', 'S2')],
  }),
  'a vehicle that rests on itself': planOf({
    vehicles: trailerOnCar.vehicles,
    contacts: trailerOnCar.contacts.map((c) => ({ ...c, lower: c.upper })),
  }),
  'two vehicles that rest on each other': planOf({
    vehicles: trailerOnCar.vehicles,
    contacts: trailerOnCar.contacts.flatMap((c) => [c, { ...c, id: 'x', lower: c.upper, upper: c.lower }]),
  }),
  'steps that wait for each other': {
    ...trailerOnCar,
    steps: trailerOnCar.steps.map((s, i, all) => ({ ...s, after: [all[(i + 1) % all.length]?.id ?? ''] })),
  },
  weightless: {
    ...trailerOnCar,
    vehicles: trailerOnCar.vehicles.map((v) => ({
      ...v,
      cargo: [],
      axles: v.axles.map((a) => ({ ...a, emptyLoad: { low: 0, high: 0 } })),
      parts: v.parts.map((p) =>
        p.carries === undefined ? p : { ...p, carries: { ...p.carries, emptyLoad: { low: 0, high: 0 } } },
      ),
    })),
  },
  ...samplePlans,
};

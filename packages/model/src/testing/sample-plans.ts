import { exactly } from '../plan/interval.js';
import type { Plan } from '../plan/plan.js';
import { foot, inch, minute } from './measures.js';
import { bearsOn, carCribs, planOf, side, sizedUp, step } from './plan-of.js';
import { chock, crib, strap, strut } from './sample-supports.js';
import { sedan, straightTruck, tractor, vanTrailer } from './sample-vehicles.js';

export * from './measures.js';
export { asphalt, gripping, planOf, step } from './plan-of.js';
export * from './sample-policy.js';
export * from './sample-supports.js';
export * from './sample-timber.js';
export * from './sample-vehicles.js';

/** A loaded semi-trailer held by cribs and A-frame struts, a car crosswise beneath its driver-side rail. */
export const trailerOnCar: Plan = planOf({
  title: 'Car under the bottom rail of a loaded van trailer',
  vehicles: [vanTrailer, sedan],
  contacts: [bearsOn('car', 'trailer', 25 * foot, -49 * inch)],
  cribs: [
    crib('A', 19.5 * foot, -side),
    crib('B', 19.5 * foot, side),
    crib('C', 30.5 * foot, -side),
    crib('D', 30.5 * foot, side),
    ...carCribs('vehicle/car', 25 * foot),
  ],
  struts: [
    strut('S1', 14 * foot, -49 * inch, -87 * inch),
    strut('S2', 14 * foot, 49 * inch, 87 * inch),
    strut('S3', 36 * foot, -49 * inch, -87 * inch),
    strut('S4', 36 * foot, 49 * inch, 87 * inch),
  ],
  ties: [strap('T1', 'S1', 'S2'), strap('T2', 'S3', 'S4')],
  chocks: [chock('K1', 'trailer'), chock('K2', 'car')],
  steps: [
    step(1, 'size up', ['vehicle/trailer', 'vehicle/car']),
    step(2, 'chock', ['vehicle/trailer'], { with: ['chock/K1'], crew: 1, takes: exactly(minute) }),
    step(3, 'capture', ['vehicle/car'], { with: ['chock/K2', 'crib/C1', 'crib/C2'] }),
    step(4, 'build', ['crib/A', 'crib/C'], { takes: exactly(6 * minute) }),
    step(5, 'build', ['crib/B', 'crib/D'], { takes: exactly(6 * minute) }),
    step(6, 'set', ['strut/S1', 'strut/S2', 'strut/S3', 'strut/S4'], { crew: 3 }),
    step(7, 'lock', ['strut/S1', 'strut/S2', 'strut/S3', 'strut/S4']),
    step(8, 'tension', ['tie/T1', 'tie/T2'], { takes: exactly(2 * minute) }),
    step(9, 'check', ['vehicle/trailer']),
  ],
  crews: [
    { name: 'Rescue 12', people: 4 },
    { name: 'Engine 4', people: 3 },
  ],
  egress: [
    {
      id: 'egress/W1',
      name: 'W1',
      points: [
        { x: 25 * foot, y: -16 * foot },
        { x: 25 * foot, y: -30 * foot },
      ],
      width: 4 * foot,
      ref: { element: 'egress/W1' },
    },
  ],
  sizeUp: sizedUp,
});

/** Crib A far too high on two contacts. */
export const tallCrib: Plan = {
  ...trailerOnCar,
  title: 'Crib too high on two contacts',
  cribs: trailerOnCar.cribs.map((c) =>
    c.name === 'A' ? { ...c, courses: 14, captures: c.captures.slice(0, 1) } : c,
  ),
};

/** Unchocked wheels, one-sided unlocked struts without a strap, the upper vehicle built before the lower one. */
export const hastyTrailer: Plan = {
  ...trailerOnCar,
  title: 'Built in haste',
  struts: trailerOnCar.struts
    .filter((s) => s.name === 'S1' || s.name === 'S3')
    .map((s) => ({ ...s, lock: 'pump only' as const, foot: { ...s.foot, y: -130 * inch } })),
  ties: [],
  chocks: [],
  steps: [step(1, 'build', ['crib/A', 'crib/C']), step(2, 'capture', ['vehicle/car'], { with: ['crib/C1'] })],
  sizeUp: [],
};

const truckCapture = (name: string) => [
  {
    vehicle: 'vehicle/truck',
    part: 'rail',
    contacts: 'outer' as const,
    ref: { element: `crib/${name}`, property: 'captures' },
  },
  {
    vehicle: 'vehicle/truck',
    part: 'joists',
    contacts: 'inner' as const,
    ref: { element: `crib/${name}`, property: 'captures' },
  },
];

/** A straight truck whose driver-side rail rests on a car. */
export const truckOnCar: Plan = planOf({
  title: 'Straight truck on a car',
  vehicles: [straightTruck, { ...sedan, at: { x: 16 * foot, y: 1 * foot } }],
  contacts: [bearsOn('car', 'truck', 16 * foot, -46 * inch)],
  cribs: [
    crib('A', 11.5 * foot, -39.75 * inch, { captures: truckCapture('A') }),
    crib('B', 11.5 * foot, 39.75 * inch, { captures: truckCapture('B') }),
    crib('C', 20.5 * foot, -39.75 * inch, { captures: truckCapture('C') }),
    crib('D', 20.5 * foot, 39.75 * inch, { captures: truckCapture('D') }),
    ...carCribs('vehicle/car', 16 * foot),
  ],
  chocks: [chock('K1', 'truck'), chock('K2', 'car')],
  steps: [
    step(1, 'chock', ['vehicle/truck', 'vehicle/car'], { with: ['chock/K1', 'chock/K2'] }),
    step(2, 'capture', ['vehicle/car'], { with: ['chock/K2', 'crib/C1', 'crib/C2'] }),
    step(3, 'build', ['crib/A', 'crib/B', 'crib/C', 'crib/D']),
  ],
  sizeUp: sizedUp,
});

/** The same truck, cribbed under its joists alone and a foot short of them. */
export const shortCribs: Plan = {
  ...truckOnCar,
  title: 'Cribs that do not reach',
  cribs: truckOnCar.cribs.map((c) => (c.courses > 2 ? { ...c, courses: 8, overhang: 2 * inch } : c)),
};

/** A tractor with an air-sprung cab, cribbed between cab and frame. */
export const airSprungCab: Plan = planOf({
  title: 'Tractor with an air-sprung cab',
  vehicles: [tractor],
  cribs: [-1, 1].map((across) => {
    const name = across < 0 ? 'A' : 'B';
    return crib(name, 11 * foot, across * 14 * inch, {
      courses: 5,
      base: 'open',
      standsOn: {
        kind: 'vehicle',
        vehicle: 'vehicle/tractor',
        part: 'frame',
      },
      captures: [
        {
          vehicle: 'vehicle/tractor',
          part: 'cab floor',
          ref: { element: `crib/${name}`, property: 'captures' },
        },
      ],
    });
  }),
  chocks: [chock('K1', 'tractor')],
  steps: [
    step(1, 'chock', ['vehicle/tractor'], { with: ['chock/K1'] }),
    step(2, 'build', ['crib/A', 'crib/B']),
  ],
  sizeUp: sizedUp,
});

/** The tractor with nothing between cab and frame. */
export const cabOnAir: Plan = { ...airSprungCab, title: 'Cab left on its air springs', cribs: [] };

/** Every sample, the sound ones first. */
export const samplePlans: Readonly<Record<string, Plan>> = {
  trailerOnCar,
  truckOnCar,
  airSprungCab,
  tallCrib,
  hastyTrailer,
  shortCribs,
  cabOnAir,
};
export { bearsOn } from './plan-of.js';

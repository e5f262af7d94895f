import { between, exactly } from '../model/interval.js';
import type { Axle, Part, Vehicle } from '../model/vehicle.js';
import { foot, inch, lb } from './measures.js';

const invented = { kind: 'invented' } as const;
const tyre = (5000 * lb) / inch;

export const axle = (
  vehicle: string,
  id: string,
  x: number,
  emptyLoad: number,
  change: Partial<Axle> = {},
): Axle => ({
  id,
  name: id,
  x,
  emptyLoad: exactly(emptyLoad),
  track: 6 * foot,
  tyresEachSide: 2,
  suspension: 'spring',
  stiffness: tyre,
  stiffnessSource: { kind: 'from memory' },
  missing: [],
  ref: { element: `vehicle/${vehicle}`, property: id },
  ...change,
});

export const part = (
  vehicle: string,
  id: string,
  form: Part['form'],
  at: { from: number; to: number; offsets: readonly number[]; height: number },
  change: Partial<Part> = {},
): Part => ({
  id,
  name: id,
  form,
  from: at.from,
  to: at.to,
  offsets: at.offsets,
  height: exactly(at.height),
  width: 3 * inch,
  depth: 4 * inch,
  mayBear: true,
  moves: false,
  ref: { element: `vehicle/${vehicle}`, property: id },
  ...change,
});

/** A 53 ft van trailer on its tandem and kingpin, 36,000 to 42,000 lb inside. */
export const vanTrailer: Vehicle = {
  kind: 'vehicle',
  id: 'vehicle/trailer',
  name: 'trailer',
  types: ['VanTrailer53', 'SemiTrailer'],
  length: 53 * foot,
  width: 102 * inch,
  height: 162 * inch,
  at: { x: 0, y: 0 },
  heading: 0,
  posture: { kind: 'upright' },
  emptyCentreHeight: between(60 * inch, 70 * inch),
  axles: [
    axle('trailer', 'axle 1', 46.5 * foot, 4300 * lb, { suspension: 'air' }),
    axle('trailer', 'axle 2', 50.5 * foot, 4300 * lb, { suspension: 'air' }),
  ],
  parts: [
    part('trailer', 'rail', 'rails', {
      from: 0,
      to: 53 * foot,
      offsets: [-49 * inch, 49 * inch],
      height: 40 * inch,
    }),
    part(
      'trailer',
      'joists',
      'crossmembers',
      { from: 4 * foot, to: 52 * foot, offsets: [-48 * inch, 48 * inch], height: 40 * inch },
      { spacing: 12 * inch },
    ),
    part(
      'trailer',
      'kingpin',
      'points',
      { from: 3 * foot, to: 3 * foot, offsets: [0], height: 47 * inch },
      {
        mayBear: false,
        remark: 'It sits in the fifth wheel.',
        carries: { stiffness: (20_000 * lb) / inch, down: true, emptyLoad: exactly(5400 * lb) },
      },
    ),
    part(
      'trailer',
      'landing legs',
      'points',
      { from: 9 * foot, to: 9 * foot, offsets: [-3 * foot, 3 * foot], height: 12 * inch },
      { carries: { stiffness: (20_000 * lb) / inch, down: false } },
    ),
  ],
  cargo: [
    {
      id: 'cargo',
      name: 'cargo',
      weight: between(36_000 * lb, 42_000 * lb),
      from: 4 * foot,
      to: 48 * foot,
      offset: between(-3 * inch, 3 * inch),
      height: between(72 * inch, 96 * inch),
      shifts: false,
      ref: { element: 'vehicle/trailer', property: 'cargo' },
    },
  ],
  brakesSet: true,
  source: invented,
};

/** A car crosswise under the trailer, its rear to the driver side. Its crushed roof is at 40 in. */
export const sedan: Vehicle = {
  kind: 'vehicle',
  id: 'vehicle/car',
  name: 'car',
  types: ['Sedan'],
  length: 15.5 * foot,
  width: 6 * foot,
  height: 57 * inch,
  at: { x: 25 * foot, y: 1 * foot },
  heading: -Math.PI / 2,
  posture: { kind: 'upright' },
  emptyCentreHeight: between(20 * inch, 23 * inch),
  axles: [
    axle('car', 'axle 1', 3 * foot, 2000 * lb, {
      track: 5 * foot,
      tyresEachSide: 1,
      stiffness: (1000 * lb) / inch,
    }),
    axle('car', 'axle 2', 12 * foot, 1400 * lb, {
      track: 5 * foot,
      tyresEachSide: 1,
      stiffness: (1000 * lb) / inch,
    }),
  ],
  parts: [
    part('car', 'sills', 'rails', {
      from: 4 * foot,
      to: 11 * foot,
      offsets: [-2.5 * foot, 2.5 * foot],
      height: 8 * inch,
    }),
    part(
      'car',
      'roof',
      'patch',
      { from: 4 * foot, to: 9 * foot, offsets: [-2 * foot, 2 * foot], height: 40 * inch },
      { mayBear: false, remark: 'Sheet metal.' },
    ),
  ],
  cargo: [],
  brakesSet: true,
  source: invented,
};

/** A two-axle straight truck with a box body. */
export const straightTruck: Vehicle = {
  ...vanTrailer,
  id: 'vehicle/truck',
  name: 'truck',
  types: ['StraightTruck', 'Truck'],
  length: 30 * foot,
  width: 96 * inch,
  height: 144 * inch,
  emptyCentreHeight: between(40 * inch, 50 * inch),
  axles: [
    axle('truck', 'axle 1', 4 * foot, 7000 * lb, { tyresEachSide: 1 }),
    axle('truck', 'axle 2', 24 * foot, 6500 * lb),
  ],
  parts: [
    part(
      'truck',
      'frame',
      'rails',
      { from: 2 * foot, to: 29 * foot, offsets: [-17 * inch, 17 * inch], height: 30 * inch },
      { depth: 10 * inch },
    ),
    part('truck', 'rail', 'rails', {
      from: 9 * foot,
      to: 30 * foot,
      offsets: [-46 * inch, 46 * inch],
      height: 40 * inch,
    }),
    part(
      'truck',
      'joists',
      'crossmembers',
      { from: 9 * foot, to: 30 * foot, offsets: [-45 * inch, 45 * inch], height: 40 * inch },
      { spacing: 12 * inch },
    ),
  ],
  cargo: [
    {
      id: 'cargo',
      name: 'cargo',
      weight: between(8000 * lb, 11_000 * lb),
      from: 9 * foot,
      to: 29 * foot,
      offset: exactly(0),
      height: between(60 * inch, 80 * inch),
      shifts: false,
      ref: { element: 'vehicle/truck', property: 'cargo' },
    },
  ],
};

/** A three-axle tractor, its cab on air springs behind. */
export const tractor: Vehicle = {
  ...straightTruck,
  id: 'vehicle/tractor',
  name: 'tractor',
  types: ['TractorSleeper', 'Tractor'],
  length: 26 * foot,
  height: 156 * inch,
  emptyCentreHeight: between(38 * inch, 46 * inch),
  axles: [
    axle('tractor', 'axle 1', 4 * foot, 10_500 * lb, { tyresEachSide: 1 }),
    axle('tractor', 'axle 2', 19 * foot, 4400 * lb, { suspension: 'air' }),
    axle('tractor', 'axle 3', 23.2 * foot, 4400 * lb, { suspension: 'air' }),
  ],
  parts: [
    part(
      'tractor',
      'frame',
      'rails',
      { from: 1.5 * foot, to: 26 * foot, offsets: [-17 * inch, 17 * inch], height: 30 * inch },
      { depth: 10 * inch },
    ),
    part(
      'tractor',
      'cab floor',
      'patch',
      { from: 6 * foot, to: 13 * foot, offsets: [-30 * inch, 30 * inch], height: 58 * inch },
      { moves: true, remark: 'The cab rides on air springs behind.' },
    ),
  ],
  cargo: [],
  cab: {
    from: 5 * foot,
    to: 13 * foot,
    weight: between(3000 * lb, 4000 * lb),
    centre: { x: between(8 * foot, 9.5 * foot), z: between(75 * inch, 85 * inch) },
    mounts: [
      {
        name: 'front mounts',
        x: 5.5 * foot,
        offsets: [-17 * inch, 17 * inch],
        spring: 'rigid',
        stiffness: (20_000 * lb) / inch,
      },
      {
        name: 'air springs',
        x: 12.5 * foot,
        offsets: [-15 * inch, 15 * inch],
        spring: 'air',
        stiffness: (500 * lb) / inch,
      },
    ],
    ref: { element: 'vehicle/tractor', property: 'cab' },
  },
};

import { between, exactly } from '../plan/interval.js';
import type { Vehicle } from '../plan/vehicle.js';
import { foot, inch, lb } from './measures.js';
import { axle, cargo, frame, part, underBox, vehicle } from './vehicle-parts.js';

export { axle, part } from './vehicle-parts.js';

/** A 53 ft van trailer on its tandem and kingpin, 36,000 to 42,000 lb inside. */
export const vanTrailer: Vehicle = vehicle(
  'trailer',
  ['VanTrailer53', 'SemiTrailer'],
  {
    length: 53 * foot,
    width: 102 * inch,
    height: 162 * inch,
    emptyCenterHeight: between(60 * inch, 70 * inch),
    axles: [
      axle('trailer', 'axle 1', 46.5 * foot, 4300 * lb, { suspension: 'air' }),
      axle('trailer', 'axle 2', 50.5 * foot, 4300 * lb, { suspension: 'air' }),
    ],
    parts: [
      ...underBox(
        'trailer',
        { from: 0, to: 53 * foot, half: 49 * inch },
        { from: 4 * foot, to: 52 * foot, half: 48 * inch },
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
        'landing gear',
        'points',
        { from: 9 * foot, to: 9 * foot, offsets: [-3 * foot, 3 * foot], height: 12 * inch },
        { carries: { stiffness: (20_000 * lb) / inch, down: false } },
      ),
    ],
  },
  {
    cargo: [
      cargo(
        'trailer',
        between(36_000 * lb, 42_000 * lb),
        4 * foot,
        48 * foot,
        between(72 * inch, 96 * inch),
        {
          offset: between(-3 * inch, 3 * inch),
        },
      ),
    ],
  },
);

/** A car crosswise under the trailer, its rear to the driver side. Its crushed roof is at 40 in. */
export const sedan: Vehicle = vehicle(
  'car',
  ['Sedan'],
  {
    length: 15.5 * foot,
    width: 6 * foot,
    height: 57 * inch,
    emptyCenterHeight: between(20 * inch, 23 * inch),
    axles: [
      axle('car', 'axle 1', 3 * foot, 2000 * lb, {
        track: 5 * foot,
        tiresEachSide: 1,
        stiffness: (1000 * lb) / inch,
      }),
      axle('car', 'axle 2', 12 * foot, 1400 * lb, {
        track: 5 * foot,
        tiresEachSide: 1,
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
  },
  { at: { x: 25 * foot, y: 1 * foot }, heading: -Math.PI / 2 },
);

/** A two-axle straight truck with a box body. */
export const straightTruck: Vehicle = vehicle(
  'truck',
  ['StraightTruck', 'Truck'],
  {
    length: 30 * foot,
    width: 96 * inch,
    height: 144 * inch,
    emptyCenterHeight: between(40 * inch, 50 * inch),
    axles: [
      axle('truck', 'axle 1', 4 * foot, 7000 * lb, { tiresEachSide: 1 }),
      axle('truck', 'axle 2', 24 * foot, 6500 * lb),
    ],
    parts: [
      frame('truck', 2 * foot, 29 * foot),
      ...underBox(
        'truck',
        { from: 9 * foot, to: 30 * foot, half: 46 * inch },
        { from: 9 * foot, to: 30 * foot, half: 45 * inch },
      ),
    ],
  },
  {
    cargo: [
      cargo('truck', between(8000 * lb, 11_000 * lb), 9 * foot, 29 * foot, between(60 * inch, 80 * inch)),
    ],
  },
);

/** A three-axle tractor, its cab on air springs behind. */
export const tractor: Vehicle = vehicle(
  'tractor',
  ['TractorSleeper', 'Tractor'],
  {
    length: 26 * foot,
    width: 96 * inch,
    height: 156 * inch,
    emptyCenterHeight: between(38 * inch, 46 * inch),
    axles: [
      axle('tractor', 'axle 1', 4 * foot, 10_500 * lb, { tiresEachSide: 1 }),
      axle('tractor', 'axle 2', 19 * foot, 4400 * lb, { suspension: 'air' }),
      axle('tractor', 'axle 3', 23.2 * foot, 4400 * lb, { suspension: 'air' }),
    ],
    parts: [
      frame('tractor', 1.5 * foot, 26 * foot),
      part(
        'tractor',
        'cab floor',
        'patch',
        { from: 6 * foot, to: 13 * foot, offsets: [-30 * inch, 30 * inch], height: 58 * inch },
        { moves: true, remark: 'The cab rides on air springs behind.' },
      ),
    ],
  },
  {
    cab: {
      from: 5 * foot,
      to: 13 * foot,
      weight: between(3000 * lb, 4000 * lb),
      center: { x: between(8 * foot, 9.5 * foot), z: between(75 * inch, 85 * inch) },
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
  },
);

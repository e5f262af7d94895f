import { between, exactly } from '../plan/interval.js';
import type { Vehicle } from '../plan/vehicle.js';
import { foot, inch, lb } from './measures.js';
import { vanTrailer } from './sample-vehicles.js';
import { axle, part } from './vehicle-parts.js';

/** A two-axle straight truck with a box body. */
export const straightTruck: Vehicle = {
  ...vanTrailer,
  id: 'vehicle/truck',
  name: 'truck',
  types: ['StraightTruck', 'Truck'],
  length: 30 * foot,
  width: 96 * inch,
  height: 144 * inch,
  emptyCenterHeight: between(40 * inch, 50 * inch),
  axles: [
    axle('truck', 'axle 1', 4 * foot, 7000 * lb, { tiresEachSide: 1 }),
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
      'joists',
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
  emptyCenterHeight: between(38 * inch, 46 * inch),
  axles: [
    axle('tractor', 'axle 1', 4 * foot, 10_500 * lb, { tiresEachSide: 1 }),
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
};

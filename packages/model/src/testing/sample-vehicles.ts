import { between, exactly } from '../plan/interval.js';
import type { Vehicle } from '../plan/vehicle.js';
import { foot, inch, lb } from './measures.js';

export { axle, part } from './vehicle-parts.js';

import { axle, invented, part } from './vehicle-parts.js';

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
  position: { kind: 'upright' },
  emptyCenterHeight: between(60 * inch, 70 * inch),
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
      'joists',
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
      'landing gear',
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
  position: { kind: 'upright' },
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
  cargo: [],
  brakesSet: true,
  source: invented,
};

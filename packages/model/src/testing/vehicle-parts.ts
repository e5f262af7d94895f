import { exactly } from '../plan/interval.js';
import type { Axle, Cargo, Part, Vehicle } from '../plan/vehicle.js';
import { foot, inch, lb } from './measures.js';

export const invented = { kind: 'invented' } as const;
export const tire = (5000 * lb) / inch;

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
  tiresEachSide: 2,
  suspension: 'spring',
  stiffness: tire,
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

/** The rails and crossmembers under a box or van body. Half widths in m. */
export const underBox = (
  vehicle: string,
  rail: { from: number; to: number; half: number },
  joists: { from: number; to: number; half: number },
): readonly Part[] => [
  part(vehicle, 'rail', 'rails', {
    from: rail.from,
    to: rail.to,
    offsets: [-rail.half, rail.half],
    height: 40 * inch,
  }),
  part(
    vehicle,
    'joists',
    'joists',
    { from: joists.from, to: joists.to, offsets: [-joists.half, joists.half], height: 40 * inch },
    { spacing: 12 * inch },
  ),
];

/** The frame rails of a truck. */
export const frame = (vehicle: string, from: number, to: number): Part =>
  part(
    vehicle,
    'frame',
    'rails',
    { from, to, offsets: [-17 * inch, 17 * inch], height: 30 * inch },
    { depth: 10 * inch },
  );

export const cargo = (
  vehicle: string,
  weight: Cargo['weight'],
  from: number,
  to: number,
  height: Cargo['height'],
  change: Partial<Cargo> = {},
): Cargo => ({
  id: 'cargo',
  name: 'cargo',
  weight,
  from,
  to,
  offset: exactly(0),
  height,
  shifts: false,
  ref: { element: `vehicle/${vehicle}`, property: 'cargo' },
  ...change,
});

/** An empty vehicle that stands on its wheels at the front of the plan. */
export const vehicle = (
  name: string,
  types: readonly string[],
  size: Pick<Vehicle, 'length' | 'width' | 'height' | 'emptyCenterHeight' | 'axles' | 'parts'>,
  change: Partial<Vehicle> = {},
): Vehicle => ({
  kind: 'vehicle',
  id: `vehicle/${name}`,
  name,
  types,
  at: { x: 0, y: 0 },
  heading: 0,
  position: { kind: 'upright' },
  cargo: [],
  brakesSet: true,
  source: invented,
  ...size,
  ...change,
});

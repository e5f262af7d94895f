import { exactly } from '../plan/interval.js';
import type { Axle, Part } from '../plan/vehicle.js';
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

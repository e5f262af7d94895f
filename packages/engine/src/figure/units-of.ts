import { usualUnit } from '@cribwright/units';
import type { Plan } from '../model/plan.js';
import type { Head } from './compute.js';
import type { Figure } from './figure.js';

/** What the reader of a plan sees lengths, forces and the rest in. */
export type Display = Plan['display'];

type Rounding = Figure['rounding'];

const head =
  (dimension: Figure['dimension'], unit: (display: Display) => string) =>
  (display: Display, key: string, label: string, rounding: Rounding, more: Partial<Head> = {}): Head => ({
    key,
    label,
    dimension,
    unit: unit(display),
    rounding,
    ...more,
  });

/** Heads of figures, one for each kind of number a plan shows. */
export const length = head('length', (d) => usualUnit('length', d));
/** A place along a vehicle: `26 ft 6 in`, or meters. */
export const place = head('length', (d) => (d === 'us' ? 'ft in' : 'm'));
export const force = head('force', (d) => usualUnit('force', d));
export const angle = head('angle', (d) => usualUnit('angle', d));
export const area = head('area', (d) => usualUnit('area', d));
export const stress = head('pressure', (d) => (d === 'us' ? 'psi' : 'MPa'));
export const pressure = head('pressure', (d) => (d === 'us' ? 'psf' : 'kPa'));
export const duration = head('duration', (d) => usualUnit('duration', d));
export const share = head('ratio', () => '%');
export const ratio = head('ratio', () => '');
export const count = head('count', () => '');

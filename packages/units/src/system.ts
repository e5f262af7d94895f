import type { Dimension } from './dimension.js';
import { findUnit } from './find-unit.js';
import type { System } from './unit.js';

const usual: Readonly<Record<Dimension, readonly [us: string, si: string]>> = {
  length: ['in', 'mm'],
  force: ['lb', 'kN'],
  mass: ['lbm', 'kg'],
  angle: ['deg', 'deg'],
  ratio: ['%', '%'],
  count: ['', ''],
  pressure: ['psi', 'kPa'],
  area: ['in2', 'cm2'],
  volume: ['ft3', 'm3'],
  duration: ['min', 'min'],
  density: ['lbm/ft3', 'kg/m3'],
  'unit weight': ['pcf', 'kN/m3'],
  stiffness: ['lb/in', 'kN/m'],
  moment: ['lb ft', 'kN m'],
};

/** The unit that a reader expects, as its id. Empty for a count. */
export const usualUnit = (dimension: Dimension, system: System): string =>
  usual[dimension][system === 'us' ? 0 : 1];

/**
 * A unit id in the reader's system: `in` stays for US readers and becomes `mm` for SI readers.
 * `ft in` is feet with inches. Ids that name no unit come back as they are.
 */
export function inSystem(id: string, system: System): string {
  if (id === 'ft in') return system === 'us' ? id : 'm';
  const unit = findUnit(id);
  if (unit === undefined || unit.system === 'both' || unit.system === system) return id;
  return unit.counterpart;
}

import { times } from './factor.js';
import { findUnit } from './find-unit.js';

/** The size of a unit in SI, from the table of units. */
function inSi(spelling: string): number {
  const unit = findUnit(spelling);
  if (unit === undefined) throw new Error(`no unit is spelled ${spelling}`);
  return times(1, unit.factor);
}

/** One inch, m. Exact. */
export const inch = inSi('in');
/** One foot, m. Exact. */
export const foot = inSi('ft');
/** The weight of one pound under standard gravity, N. Exact. */
export const poundForce = inSi('lb');
/** One pound on a square inch, Pa. */
export const psi = inSi('psi');
/** One pound on a square foot, Pa. */
export const psf = inSi('psf');

/** Factors to SI, for plans written as data. */
export { foot, inch, poundForce as lb, psf, psi } from '@cribwright/units';

export const degree = Math.PI / 180;
export const minute = 60;

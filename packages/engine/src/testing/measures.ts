/** Factors to SI, for plans written as data. */
export const inch = 0.0254;
export const foot = 12 * inch;
export const lb = 4.4482216152605;
export const psi = lb / inch ** 2;
export const psf = lb / foot ** 2;
export const degree = Math.PI / 180;
export const minute = 60;

import { type Dimension, describe, dimensions } from './dimension.js';

/** Exponents of a quantity in the four things that quantities here are made of. Exponents have no unit. */
export interface Vector {
  readonly length: number;
  readonly mass: number;
  readonly time: number;
  /** Kept apart from plain numbers, so that degrees cannot be added to a ratio. */
  readonly angle: number;
}

const vector = (length: number, mass: number, time: number, angle = 0): Vector => ({
  length,
  mass,
  time,
  angle,
});

const vectors: Readonly<Record<Dimension, Vector>> = {
  length: vector(1, 0, 0),
  force: vector(1, 1, -2),
  mass: vector(0, 1, 0),
  angle: vector(0, 0, 0, 1),
  ratio: vector(0, 0, 0),
  count: vector(0, 0, 0),
  pressure: vector(-1, 1, -2),
  area: vector(2, 0, 0),
  volume: vector(3, 0, 0),
  duration: vector(0, 0, 1),
  density: vector(-3, 1, 0),
  'unit weight': vector(-2, 1, -2),
  stiffness: vector(0, 1, -2),
  moment: vector(2, 1, -2),
};

/** The vector of a plain number. */
export const plain: Vector = vectors.ratio;

/** The exponents of a dimension. */
export const vectorOf = (dimension: Dimension): Vector => vectors[dimension];

/** Whether two quantities may be added. */
export const sameVector = (a: Vector, b: Vector): boolean =>
  a.length === b.length && a.mass === b.mass && a.time === b.time && a.angle === b.angle;

/** The exponents of a product. */
export const multiply = (a: Vector, b: Vector): Vector =>
  vector(a.length + b.length, a.mass + b.mass, a.time + b.time, a.angle + b.angle);

/** The exponents of a quotient, a ÷ b. */
export const divide = (a: Vector, b: Vector): Vector => multiply(a, power(b, -1));

/**
 * A power of a quantity; `n` is the exponent and has no unit. Half powers are right for square roots: `power(area,
 * 0.5)` is a length.
 */
export const power = (a: Vector, n: number): Vector => {
  const times = (exponent: number) => (exponent === 0 ? 0 : exponent * n);
  return vector(times(a.length), times(a.mass), times(a.time), times(a.angle));
};

/** The dimension that has this vector; `ratio` for a plain number; `undefined` where the vector has no name. */
export const dimensionOf = (v: Vector): Dimension | undefined =>
  dimensions.find((d) => sameVector(vectors[d], v));

/** The vector in words: `a length`, `a weight`; `an unnamed mix of units` where there is no better word. */
export const describeVector = (v: Vector): string => {
  const dimension = dimensionOf(v);
  if (dimension !== undefined) return describe(dimension);
  const overForce = dimensionOf(divide(v, vectors.force));
  if (overForce !== undefined) return `a weight times ${describe(overForce)}`;
  if (v.mass === 0 && v.time === 0 && v.angle === 0) return `a length to the power ${v.length}`;
  return 'an unnamed mix of units';
};

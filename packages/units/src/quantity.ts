import type { Dimension } from './dimension.js';
import { over, times } from './factor.js';
import type { Unit } from './unit.js';

/** A number with its dimension, in SI: meters, newtons, pascals, radians, seconds, kilograms. */
export interface Quantity {
  readonly value: number;
  readonly dimension: Dimension;
}

/** `quantity(24, inch)`: 0.6096 m. */
export const quantity = (value: number, unit: Unit): Quantity => ({
  value: times(value, unit.factor),
  dimension: unit.dimension,
});

/** A number written in a unit, in SI. */
export const toSI = (value: number, unit: Unit): number => times(value, unit.factor);

/** A number in SI, in a unit. */
export const fromSI = (value: number, unit: Unit): number => over(value, unit.factor);

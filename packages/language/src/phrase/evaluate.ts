import type { Interval } from '@cribwright/model';
import {
  divide,
  multiply,
  plain,
  sameVector,
  toSI,
  type Vector,
  vectorOf,
  weightOf,
} from '@cribwright/units';
import type { Declaration } from '../bound/bound-file.js';
import type { Expression } from './expression.js';

/** A value in SI, known to lie between two ends, and what it measures. */
export interface Amount extends Interval {
  readonly vector: Vector;
}

/** What the names in a calculation come to. `undefined` where that cannot be told. */
export interface Values {
  amountOf(declaration: Declaration): Amount | undefined;
  figureOf(expression: Extract<Expression, { kind: 'figure' }>): Amount | undefined;
}

const force = vectorOf('force');
const mass = vectorOf('mass');

/**
 * What a calculation comes to, worst ends kept. `undefined` where a number in it is malformed, a name is not known, or
 * it divides by zero.
 */
export function evaluate(e: Expression, values: Values): Amount | undefined {
  const of = (x: Expression) => evaluate(x, values);
  switch (e.kind) {
    case 'number': {
      if (e.value === undefined) return undefined;
      const value = e.unit ? toSI(e.value, e.unit.unit) : e.value;
      return { low: value, high: value, vector: e.unit ? vectorOf(e.unit.unit.dimension) : plain };
    }
    case 'compound': {
      let sum = 0;
      for (const { value, unit } of e.pieces) {
        if (value === undefined || !unit) return undefined;
        sum += toSI(value, unit.unit);
      }
      const unit = e.pieces[0]?.unit?.unit;
      return unit ? { low: sum, high: sum, vector: vectorOf(unit.dimension) } : undefined;
    }
    case 'named':
      return e.reference.target ? values.amountOf(e.reference.target) : undefined;
    case 'figure':
      return values.figureOf(e);
    case 'group':
      return of(e.of);
    case 'negative': {
      const x = of(e.of);
      return x && { low: -x.high, high: -x.low, vector: x.vector };
    }
    case 'range': {
      const high = of(e.high);
      const low = of(withUnit(e.low, e.high));
      return (
        low &&
        high && { low: Math.min(low.low, high.low), high: Math.max(low.high, high.high), vector: high.vector }
      );
    }
    case 'tolerance': {
      const middle = of(e.middle);
      const by = of(e.by);
      if (!middle || !by) return undefined;
      const share = sameVector(by.vector, plain) && !sameVector(middle.vector, plain);
      const down = share ? Math.abs(middle.low * by.high) : by.high;
      const up = share ? Math.abs(middle.high * by.high) : by.high;
      return { low: middle.low - down, high: middle.high + up, vector: middle.vector };
    }
    case 'binary':
      return combine(e.operator, of(e.left), of(e.right));
  }
}

/** Whether a number that is written in it could not be read. */
export function hasMalformed(e: Expression): boolean {
  switch (e.kind) {
    case 'number':
      return e.value === undefined;
    case 'compound':
      return e.pieces.some(hasMalformed);
    case 'named':
    case 'figure':
      return false;
    case 'group':
    case 'negative':
      return hasMalformed(e.of);
    case 'range':
      return hasMalformed(e.low) || hasMalformed(e.high);
    case 'tolerance':
      return hasMalformed(e.middle) || hasMalformed(e.by);
    case 'binary':
      return hasMalformed(e.left) || hasMalformed(e.right);
  }
}

/** The low end of `36,000 to 42,000 lb`, with the unit that it borrows. */
const withUnit = (low: Expression, high: Expression): Expression => {
  const unit =
    high.kind === 'number' ? high.unit : high.kind === 'compound' ? high.pieces[0]?.unit : undefined;
  if (!unit) return low;
  if (low.kind === 'number' && !low.unit) return { ...low, unit };
  return low.kind === 'negative' ? { ...low, of: withUnit(low.of, high) } : low;
};

/** A bare number, or one below zero: as the low end of a range it takes the unit of the high end. */
export const isBare = (e: Expression): boolean =>
  e.kind === 'negative' ? isBare(e.of) : e.kind === 'number' && !e.unit;

function combine(
  operator: '+' | '-' | '*' | '/',
  a: Amount | undefined,
  b: Amount | undefined,
): Amount | undefined {
  if (!a || !b) return undefined;
  const added = operator === '+' || operator === '-';
  const [x, y] = added ? weighed(a, b) : [a, b];
  // A length less a plain number is no length: that is told where it stands, and comes to nothing.
  if (added && !sameVector(x.vector, y.vector)) return undefined;
  switch (operator) {
    case '+':
      return { low: x.low + y.low, high: x.high + y.high, vector: x.vector };
    case '-':
      return { low: x.low - y.high, high: x.high - y.low, vector: x.vector };
    case '*':
      return { ...corners(x, y, (p, q) => p * q), vector: multiply(x.vector, y.vector) };
    case '/':
      if (y.low <= 0 && y.high >= 0) return undefined;
      return { ...corners(x, y, (p, q) => p / q), vector: divide(x.vector, y.vector) };
  }
}

const corners = (x: Interval, y: Interval, f: (p: number, q: number) => number): Interval => {
  const all = [f(x.low, y.low), f(x.low, y.high), f(x.high, y.low), f(x.high, y.high)];
  return { low: Math.min(...all), high: Math.max(...all) };
};

const weighed = (a: Amount, b: Amount): readonly [Amount, Amount] =>
  sameVector(a.vector, b.vector) ? [a, b] : [asForce(a), asForce(b)];

/** A mass as its weight at standard gravity. */
export const asForce = (a: Amount): Amount =>
  sameVector(a.vector, mass) ? { low: weightOf(a.low), high: weightOf(a.high), vector: force } : a;

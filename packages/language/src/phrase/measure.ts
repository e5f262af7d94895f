import type { Interval } from '@cribwright/engine';
import {
  type Dimension,
  describeVector,
  dimensionOf,
  divide,
  multiply,
  plain,
  sameVector,
  toSI,
  type Vector,
  vectorOf,
  weightOf,
} from '@cribwright/units';
import type { Declaration } from '../binding/declaration.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { say } from '../problems/words.js';
import type { Expression } from './expression.js';

/** A value in SI, known to lie between two ends, and what it measures. */
export interface Amount extends Interval {
  readonly vector: Vector;
}

/** What the names in a calculation come to. `undefined` where that cannot be told. */
export interface Values {
  vectorOf(declaration: Declaration): Vector | undefined;
  amountOf(declaration: Declaration): Amount | undefined;
  figureOf(expression: Extract<Expression, { kind: 'figure' }>): Amount | undefined;
}

const force = vectorOf('force');
const mass = vectorOf('mass');

/** What a calculation measures. Problems are added where its pieces do not fit. */
export function vectorOfExpression(
  e: Expression,
  names: Pick<Values, 'vectorOf'>,
  text: (e: Expression) => string,
  problems: LanguageProblem[],
): Vector | undefined {
  const of = (x: Expression) => vectorOfExpression(x, names, text, problems);
  switch (e.kind) {
    case 'number':
      return e.unit ? vectorOf(e.unit.unit.dimension) : plain;
    case 'compound': {
      const unit = e.pieces[0]?.unit;
      return unit ? vectorOf(unit.unit.dimension) : undefined;
    }
    case 'named':
      return e.reference.target ? names.vectorOf(e.reference.target) : undefined;
    case 'figure':
      return vectorOf(e.figure === 'weight' ? 'force' : 'length');
    case 'negative':
    case 'group':
      return of(e.of);
    case 'range': {
      const [low, high] = [e.low, e.high];
      const top = of(high);
      // `36,000 to 42,000 lb`: the first number takes the unit of the second.
      if (low.kind === 'number' && !low.unit && unitOf(high)) return top;
      return agree(of(low), top, () => clash(low, high, 'put in one range', names, text, problems));
    }
    case 'tolerance': {
      const by = of(e.by);
      const middle = of(e.middle);
      if (!by || !middle || sameVector(by, plain)) return middle;
      return agree(middle, by, () => clash(e.middle, e.by, 'put in one range', names, text, problems));
    }
    case 'binary': {
      const [left, right] = [of(e.left), of(e.right)];
      if (!left || !right) return undefined;
      if (e.operator === '*') return multiply(left, right);
      if (e.operator === '/') return divide(left, right);
      const done = e.operator === '+' ? 'added' : 'subtracted';
      return agree(left, right, () => clash(e.left, e.right, done, names, text, problems));
    }
  }
}

/** Two things of the same kind; a mass beside a weight counts as its weight. */
const agree = (a: Vector | undefined, b: Vector | undefined, otherwise: () => void): Vector | undefined => {
  if (!a || !b) return a ?? b;
  if (sameVector(a, b)) return a;
  if ((sameVector(a, force) && sameVector(b, mass)) || (sameVector(a, mass) && sameVector(b, force)))
    return force;
  otherwise();
  return undefined;
};

function clash(
  left: Expression,
  right: Expression,
  done: string,
  names: Pick<Values, 'vectorOf'>,
  text: (e: Expression) => string,
  problems: LanguageProblem[],
): void {
  const quiet: LanguageProblem[] = [];
  const is = (e: Expression) => {
    const v = vectorOfExpression(e, names, text, quiet);
    return v ? describeVector(v) : 'not known';
  };
  const holes = { left: text(left), leftIs: is(left), right: text(right), rightIs: is(right), done };
  const span = { start: left.span.start, end: right.span.end };
  // The nearest sensible reading: a bare number takes the unit of its neighbour.
  const bare = [right, left].find((e) => e.kind === 'number' && !e.unit);
  const unit =
    unitOf(bare === right ? left : right) ??
    (bare ? usual(bare === right ? left : right, names, text) : undefined);
  if (!bare || unit === undefined) {
    problems.push(problem('dimension-clash', span, holes));
    return;
  }
  const near = `${text(bare)} ${unit}`;
  problems.push(
    problem(
      'dimension-clash.near',
      span,
      { ...holes, near },
      {
        fixes: [replace(say('dimension-clash.fix', { near }), bare.span, near)],
      },
    ),
  );
}

const usual = (
  e: Expression,
  names: Pick<Values, 'vectorOf'>,
  text: (e: Expression) => string,
): string | undefined => {
  const v = vectorOfExpression(e, names, text, []);
  const d = v ? dimensionOf(v) : undefined;
  return d === 'length' ? 'in' : d === 'force' ? 'lb' : d === 'angle' ? 'deg' : undefined;
};

/** The unit that a quantity is written in, the smallest where there are several. */
export const unitOf = (e: Expression): string | undefined => {
  switch (e.kind) {
    case 'number':
      return e.unit?.text;
    case 'compound':
      return e.pieces.at(-1)?.unit?.text;
    case 'range':
      return unitOf(e.high);
    case 'tolerance':
      return unitOf(e.middle);
    case 'group':
    case 'negative':
      return unitOf(e.of);
    case 'binary':
      return unitOf(e.left) ?? unitOf(e.right);
    default:
      return undefined;
  }
};

/** What a calculation comes to, worst ends kept. `undefined` where a name in it is not known or it divides by zero. */
export function evaluate(e: Expression, values: Values): Amount | undefined {
  const of = (x: Expression) => evaluate(x, values);
  switch (e.kind) {
    case 'number': {
      const value = e.unit ? toSI(e.value, e.unit.unit) : e.value;
      return { low: value, high: value, vector: e.unit ? vectorOf(e.unit.unit.dimension) : plain };
    }
    case 'compound': {
      const sum = e.pieces.reduce((total, p) => total + (p.unit ? toSI(p.value, p.unit.unit) : 0), 0);
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

/** The low end of `36,000 to 42,000 lb`, with the unit that it borrows. */
const withUnit = (low: Expression, high: Expression): Expression => {
  const unit =
    high.kind === 'number' ? high.unit : high.kind === 'compound' ? high.pieces[0]?.unit : undefined;
  return low.kind === 'number' && !low.unit && unit ? { ...low, unit } : low;
};

function combine(
  operator: '+' | '-' | '*' | '/',
  a: Amount | undefined,
  b: Amount | undefined,
): Amount | undefined {
  if (!a || !b) return undefined;
  const [x, y] = operator === '+' || operator === '-' ? weighed(a, b) : [a, b];
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

/** True where the amount may stand for that dimension. */
export const fits = (v: Vector, d: Dimension): boolean => sameVector(v, vectorOf(d));

import { message, name, term } from '@cribwright/messages';
import {
  type Dimension,
  dimensionOf,
  divide,
  multiply,
  plain,
  sameVector,
  type Vector,
  vectorOf,
} from '@cribwright/units';
import type { Declaration } from '../bound/bound-file.js';
import { type LanguageProblem, problem, replace, type TextFix } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { measureOf } from './dimension-words.js';
import { isBare } from './evaluate.js';
import type { Expression } from './expression.js';
import { unitOf } from './unit-of.js';

/** What a name in a calculation measures; `undefined` where that cannot be told. */
export interface Vectors {
  vectorOf(declaration: Declaration): Vector | undefined;
}

const force = vectorOf('force');
const mass = vectorOf('mass');

/** What a calculation measures. Problems are added where its pieces do not fit. */
export function vectorOfExpression(
  e: Expression,
  names: Vectors,
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
      if (isBare(low) && unitOf(high)) return top;
      return agree(of(low), top, () => clash(low, high, 'range', names, text, problems));
    }
    case 'tolerance': {
      const by = of(e.by);
      const middle = of(e.middle);
      if (!by || !middle || sameVector(by, plain)) return middle;
      return agree(middle, by, () => clash(e.middle, e.by, 'range', names, text, problems));
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

/** What is done with two things that do not fit. */
type Clash = 'added' | 'subtracted' | 'range';

function clash(
  left: Expression,
  right: Expression,
  done: Clash,
  names: Vectors,
  text: (e: Expression) => string,
  problems: LanguageProblem[],
): void {
  const quiet: LanguageProblem[] = [];
  const is = (e: Expression) => {
    const v = vectorOfExpression(e, names, text, quiet);
    return v ? measureOf(v) : term('word.not-known');
  };
  const found = (fixes: readonly TextFix[], near?: string): LanguageProblem =>
    problem(
      `dimension-clash--${done}`,
      span,
      {
        left: name(text(left)),
        leftIs: is(left),
        right: name(text(right)),
        rightIs: is(right),
        ...(near === undefined
          ? {}
          : { advice: message('language.dimension-clash--near', { near: name(near) }) }),
      },
      { fixes },
    );
  const span = { start: left.span.start, end: right.span.end };
  // `36,000-42,000 lb` is meant as a range.
  if (done === 'subtracted' && isBare(left) && left.kind === 'number' && unitOf(right) !== undefined) {
    const near = `${text(left)} to ${text(right)}`;
    const fixes = [replace(problemMessage('dimension-clash--fix', { near: name(near) }), span, near)];
    if (
      right.kind === 'number' &&
      left.value !== undefined &&
      right.value !== undefined &&
      left.value < right.value
    ) {
      problems.push(found(fixes, near));
      return;
    }
  }
  // The nearest sensible reading: a bare number takes the unit of its neighbor.
  const bare = [right, left].find((e) => e.kind === 'number' && !e.unit);
  const unit =
    unitOf(bare === right ? left : right) ??
    (bare ? usual(bare === right ? left : right, names, text) : undefined);
  if (!bare || unit === undefined) {
    problems.push(found([]));
    return;
  }
  const near = `${text(bare)} ${unit}`;
  problems.push(
    found([replace(problemMessage('dimension-clash--fix', { near: name(near) }), bare.span, near)], near),
  );
}

const usual = (e: Expression, names: Vectors, text: (e: Expression) => string): string | undefined => {
  const v = vectorOfExpression(e, names, text, []);
  const d = v ? dimensionOf(v) : undefined;
  return d === 'length' ? 'in' : d === 'force' ? 'lb' : d === 'angle' ? 'deg' : undefined;
};

/** True where the amount may stand for that dimension. */
export const fits = (v: Vector, d: Dimension): boolean => sameVector(v, vectorOf(d));

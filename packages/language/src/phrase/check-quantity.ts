import { type List, list, name } from '@cribwright/messages';
import { findUnit, plain, sameVector, show, unitsOf, type Vector } from '@cribwright/units';
import type { QuantityRule } from '../bound/shape.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import { dueOf, exampleOf, measureOf } from './dimension-words.js';
import { type Amount, asForce, evaluate, type Values } from './evaluate.js';
import type { Expression } from './expression.js';
import { fits, vectorOfExpression } from './measure.js';
import { isPlain, type NameScope } from './scope.js';
import { unitOf } from './unit-of.js';

/** Never below zero, whatever the line. */
const positive = [
  'force',
  'mass',
  'pressure',
  'area',
  'volume',
  'duration',
  'density',
  'unit weight',
  'stiffness',
];

/** What is wrong with a quantity where something of that kind is due. */
export function checkQuantity(
  e: Expression,
  rule: QuantityRule,
  scope: NameScope,
  text: (e: Expression) => string,
): readonly LanguageProblem[] {
  const problems: LanguageProblem[] = [];
  const vector = vectorOfExpression(e, scope, text, problems);
  if (!vector || problems.length > 0) return problems;
  if (!rule.dimensions.some((d) => fits(vector, d))) return [wrongDimension(e, vector, rule, text)];
  if (rule.percent && sameVector(vector, plain) && bareNumber(e)) return [percentMissing(e, text)];
  return checkSize(e, rule, text);
}

function wrongDimension(
  e: Expression,
  vector: Vector,
  rule: QuantityRule,
  text: (e: Expression) => string,
): LanguageProblem {
  const due = dueOf(rule.dimensions);
  const written = text(e);
  const example = exampleOf(rule.dimensions);
  const bare = bareNumber(e);
  if (bare && !rule.dimensions.some(isPlain)) {
    const units = likelyUnits(rule, sizeOf(bare));
    return problem(
      'unit-missing',
      e.span,
      { text: name(written), due, example: options(written, units, example) },
      {
        fixes: units.map((u) => {
          const near = `${text(bare)} ${u}`;
          return replace(problemMessage('unit-missing--fix', { near: name(near) }), bare.span, near);
        }),
      },
    );
  }
  const is = measureOf(vector);
  const unit = e.kind === 'number' ? e.unit : undefined;
  const near = likelyUnits(rule, 0)[0];
  const fixes =
    unit && near
      ? [replace(problemMessage('wrong-dimension--fix', { near: name(near) }), unit.span, near)]
      : [];
  return problem(
    'wrong-dimension',
    e.span,
    { due, example: name(example), text: name(written), is },
    { fixes },
  );
}

const options = (written: string, units: readonly string[], example: string): List =>
  list(
    (units.length === 0 ? [example] : units.map((u) => `${written} ${u}`)).map((text) => name(text)),
    'or',
  );

/** The units a crew would mean: the usual ones of the first dimension. */
const likelyUnits = (rule: QuantityRule, size: number): readonly string[] => {
  const dimension = rule.dimensions.find((d) => !isPlain(d));
  if (!dimension) return [];
  const known: Partial<Record<typeof dimension, readonly string[]>> = {
    // Nobody means 300 ft of timber, or 36,000 kN of cargo.
    length: size > 100 ? ['in', 'mm'] : ['in', 'ft'],
    force: size > 1000 ? ['lb', 'kg'] : ['lb', 'kN'],
    angle: ['deg'],
    duration: ['min'],
    pressure: ['psi', 'psf'],
    volume: ['yd3', 'm3'],
    stiffness: ['lb/in'],
    'unit weight': ['pcf'],
    density: ['kg/m3'],
  };
  return (
    known[dimension] ??
    unitsOf(dimension)
      .slice(0, 1)
      .map((u) => u.id)
  ).filter((u) => findUnit(u));
};

/** How large a bare number is, to tell which unit is likely. */
const sizeOf = (e: Expression): number =>
  e.kind === 'number' && e.value !== undefined ? Math.abs(e.value) : 0;

/** The bare number in an expression that is nothing more than one, or a range of them. */
function bareNumber(e: Expression): Expression | undefined {
  switch (e.kind) {
    case 'number':
      return e.unit ? undefined : e;
    case 'negative':
    case 'group':
      return bareNumber(e.of);
    case 'range':
      return bareNumber(e.low) && bareNumber(e.high);
    case 'tolerance':
      return bareNumber(e.middle);
    default:
      return undefined;
  }
}

function percentMissing(e: Expression, text: (e: Expression) => string): LanguageProblem {
  const value = e.kind === 'number' && e.value !== undefined ? e.value : 0;
  const percent = `${Math.round(value * 1e6) / 1e4} %`;
  const written = text(e);
  const near = `${written} %`;
  return problem(
    'percent-missing',
    e.span,
    { text: name(written), percent: name(percent), example: name(near) },
    {
      fixes: [replace(problemMessage('unit-missing--fix', { near: name(near) }), e.span, near)],
    },
  );
}

const noNames: Values = { amountOf: () => undefined, figureOf: () => undefined };

function checkSize(e: Expression, rule: QuantityRule, text: (e: Expression) => string): LanguageProblem[] {
  const problems: LanguageProblem[] = [];
  orderOfEnds(e, text, problems);
  zeroDivision(e, problems);
  const amount = evaluate(e, noNames);
  return amount ? [...problems, ...outOfBounds(e, amount, rule, text)] : problems;
}

/** Whether it is known without any name, and so was held to its bounds where it is written. */
export const hangsOnNoName = (e: Expression): boolean => evaluate(e, noNames) !== undefined;

/** What is wrong with the size of a quantity, once it is known what it comes to. */
export function outOfBounds(
  e: Expression,
  amount: Amount,
  rule: QuantityRule,
  text: (e: Expression) => string,
): LanguageProblem[] {
  const problems: LanguageProblem[] = [];
  const dimension = rule.dimensions.find((d) => fits(amount.vector, d)) ?? 'ratio';
  if (dimension === 'count' && !Number.isInteger(amount.low)) {
    problems.push(problem('not-whole', e.span, { text: name(text(e)) }));
  }
  if (amount.low < 0 && (positive.includes(dimension) || dimension === 'count' || rule.atLeast === 0)) {
    problems.push(
      problem('below-zero', e.span, {
        text: name(text(e)),
        due: dueOf(rule.dimensions),
      }),
    );
    return problems;
  }
  const unit = unitOf(e) ?? '';
  const shown = (value: number, way: 'up' | 'down') =>
    unit === '' && isPlain(dimension)
      ? `${value}`
      : show(value, dimension, findUnit(unit)?.id ?? 'us', { rounding: way });
  const { low, high } = rule.dimensions.includes('force') ? asForce(amount) : amount;
  if (rule.atLeast !== undefined && low < rule.atLeast) {
    problems.push(
      problem('too-small', e.span, { text: name(text(e)), least: name(shown(rule.atLeast, 'up')) }),
    );
  } else if (rule.atMost !== undefined && high > rule.atMost) {
    problems.push(
      problem('too-large', e.span, { text: name(text(e)), most: name(shown(rule.atMost, 'down')) }),
    );
  }
  return problems;
}

function orderOfEnds(e: Expression, text: (e: Expression) => string, problems: LanguageProblem[]): void {
  if (e.kind !== 'range') return;
  const unit = e.high.kind === 'number' ? e.high.unit : undefined;
  const borrows = e.low.kind === 'number' && !e.low.unit && unit;
  const low = evaluate(borrows && e.low.kind === 'number' ? { ...e.low, unit } : e.low, noNames);
  const high = evaluate(e.high, noNames);
  if (!low || !high || low.low <= high.high) return;
  const highText =
    borrows && e.high.kind === 'number'
      ? text({ ...e.high, unit: undefined, span: numberSpan(e.high) })
      : text(e.high);
  const lowText = borrows ? `${text(e.low)} ${unit.text}` : text(e.low);
  problems.push(
    problem(
      'range-order',
      e.span,
      { low: name(text(e.low)), high: name(text(e.high)) },
      {
        fixes: [replace(problemMessage('range-order--fix', {}), e.span, `${highText} to ${lowText}`)],
      },
    ),
  );
}

const numberSpan = (e: Extract<Expression, { kind: 'number' }>) =>
  e.unit ? { start: e.span.start, end: e.unit.span.start } : e.span;

function zeroDivision(e: Expression, problems: LanguageProblem[]): void {
  if (e.kind === 'binary') {
    zeroDivision(e.left, problems);
    zeroDivision(e.right, problems);
    const by = e.operator === '/' ? evaluate(e.right, noNames) : undefined;
    if (by && by.low <= 0 && by.high >= 0) problems.push(problem('divided-by-zero', e.right.span, {}));
  } else if (e.kind === 'group' || e.kind === 'negative') zeroDivision(e.of, problems);
}

import { type Dimension, findUnit } from '@cribwright/units';
import type { QuantityRule } from '../bound/shape.js';
import { checkQuantity } from './check-quantity.js';
import type { Expression } from './expression.js';
import type { Expected } from './match.js';
import type { Matching, Next, State } from './matching.js';
import { parseExpression } from './parse-expression.js';
import { unitOf } from './unit-of.js';

export function quantity(
  m: Matching,
  slot: string,
  rule: QuantityRule,
  s: State,
  next: Next,
): State | undefined {
  const expected: Expected = { kind: 'quantity', slot, dimensions: rule.dimensions, range: rule.range };
  const read = parseExpression(s.at, expression(m, rule, false));
  if (!read) return m.miss(s.at, expected);
  const lastPiece = read.pieces.at(-1);
  if (lastPiece?.kind === 'number') m.miss(read.next, { kind: 'unit', dimensions: rule.dimensions });
  const problems = [
    ...read.problems,
    ...(read.problems.length > 0
      ? []
      : checkQuantity(read.expression, rule, m.request.scope, (e) => m.textOf(e.span))),
  ];
  if (m.strict && problems.length > 0) return undefined;
  const value = {
    expression: read.expression,
    dimension: dimensionFor(read.expression, rule),
    rule,
    span: read.expression.span,
  };
  const pieces = read.pieces.map((p) => ({
    ...p,
    slot,
    dimension: p.dimension ?? rule.dimensions[0] ?? 'count',
  }));
  return next(m.took(s, read.next - s.at, { [slot]: value }, { ...read, problems, pieces }));
}

export function anyExpression(m: Matching, slot: string, s: State, next: Next): State | undefined {
  const rule: QuantityRule = { dimensions: [], range: true };
  const read = parseExpression(s.at, expression(m, rule, true));
  if (!read) return m.miss(s.at, { kind: 'quantity', slot, dimensions: [], range: true });
  if (m.strict && read.problems.length > 0) return undefined;
  return next(m.took(s, read.next - s.at, { [slot]: read.expression }, read));
}

function expression(m: Matching, rule: QuantityRule, free: boolean) {
  const { terms, scope, text } = m.request;
  return { terms, text, scope, rule, free, reserved: m.reserved };
}

/** Which of the dimensions that are due was written. */
const dimensionFor = (e: Expression, rule: QuantityRule): Dimension => {
  const unit = writtenUnit(e);
  return rule.dimensions.find((d) => d === unit) ?? rule.dimensions[0] ?? 'count';
};

const writtenUnit = (e: Expression): Dimension | undefined => {
  const text = unitOf(e);
  return text === undefined ? undefined : findUnit(text)?.dimension;
};

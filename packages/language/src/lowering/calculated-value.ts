import type { Figure } from '@cribwright/messages';
import { type Hole, inWords, list, name, type QuantityKind, term } from '@cribwright/messages';
import { given, type Head, measured } from '@cribwright/model';
import { type Dimension, dimensionOf, findUnit, plain, sameVector } from '@cribwright/units';
import type { Declaration } from '../bound/bound-file.js';
import { type Amount, evaluate } from '../phrase/evaluate.js';
import type { Expression } from '../phrase/expression.js';
import { unitOf } from '../phrase/unit-of.js';
import { amountOfName, letExpression, type Names } from './amount-of-name.js';

type Leaf = Extract<Expression, { kind: 'named' | 'figure' }>;

/**
 * What a `let` comes to, its sum written out: `gap: 1.5 in = trailer rail height - A height = 40 in - 38.5 in`.
 *
 * @param label what it is called; its name where nothing is given
 * @returns `undefined` for a line that could not be read, and for a value that no unit is made for (`in2 × lb`)
 */
export function calculatedValue(d: Declaration, names: Names, label = d.name, depth = 0): Figure | undefined {
  const expression = letExpression(d, names.around);
  const amount = amountOfName(d, names);
  const head = headOf(d.name, label, amount, expression && unitOf(expression));
  if (!expression || !head) return undefined;
  const text = names.around.shapeOf(d.uri)?.text ?? '';
  const asWritten = (from: number, to: number) => name(text.slice(from, to).replace(/\s+/g, ' '));
  const leaves = leavesOf(expression);
  const pieces: Hole[] = [];
  let at = expression.span.start;
  for (const leaf of leaves) {
    const written = text.slice(leaf.span.start, leaf.span.end);
    pieces.push(asWritten(at, leaf.span.start), inWords(figureOfLeaf(leaf, written, names, depth)));
    at = leaf.span.end;
  }
  pieces.push(asWritten(at, expression.span.end));
  const source = leaves.length === 0 ? { kind: 'stated' as const } : undefined;
  return measured(head, ends(amount), list(pieces, 'none'), source);
}

/** A name inside a sum: another `let` with its own sum, or something that stands in the plan. */
function figureOfLeaf(leaf: Leaf, written: string, names: Names, depth: number): Figure {
  const target = leaf.kind === 'named' ? leaf.reference.target : undefined;
  if (target?.kind === 'value' && depth < deepest) {
    const value = calculatedValue(target, names, target.name, depth + 1);
    if (value) return value;
  }
  const amount = evaluate(leaf, { amountOf: (d) => amountOfName(d, names), figureOf: names.figureOf });
  const head = headOf(written, written, amount, undefined) ?? unnamed(written);
  return target?.kind === 'parameter'
    ? given(head, ends(amount), { kind: 'stated' })
    : measured(head, ends(amount), term('figure.read-off-the-plan'));
}

/** Sums inside sums, as far down as sources are looked for. */
const deepest = 3;

/** The names in a calculation, in the order in which they are written. */
function leavesOf(e: Expression): readonly Leaf[] {
  switch (e.kind) {
    case 'number':
    case 'compound':
      return [];
    case 'named':
    case 'figure':
      return [e];
    case 'group':
    case 'negative':
      return leavesOf(e.of);
    case 'range':
      return [...leavesOf(e.low), ...leavesOf(e.high)];
    case 'tolerance':
      return [...leavesOf(e.middle), ...leavesOf(e.by)];
    case 'binary':
      return [...leavesOf(e.left), ...leavesOf(e.right)];
  }
}

const unnamed = (label: string): Head => ({
  key: label,
  label: name(label),
  quantity: 'count',
  rounding: 'nearest',
});

/** Whoever uses the value decides which way is the dangerous one: here it is rounded to the nearest. */
function headOf(
  key: string,
  label: string,
  amount: Amount | undefined,
  written: string | undefined,
): Head | undefined {
  if (!amount) return { ...unnamed(label), key };
  const unit = written === undefined ? undefined : findUnit(written);
  if (sameVector(amount.vector, plain) && unit?.dimension !== 'ratio') return { ...unnamed(label), key };
  const dimension = dimensionOf(amount.vector);
  if (dimension === undefined) return undefined;
  const shown = unit?.dimension === dimension ? unit.id : undefined;
  return {
    key,
    label: name(label),
    quantity: kindOf[dimension],
    ...(shown === undefined ? {} : { unit: shown }),
    rounding: 'nearest',
  };
}

const kindOf: Readonly<Record<Dimension, QuantityKind>> = {
  length: 'length',
  force: 'force',
  mass: 'mass',
  angle: 'angle',
  ratio: 'share',
  count: 'count',
  pressure: 'stress',
  area: 'area',
  volume: 'volume',
  duration: 'duration',
  density: 'density',
  'unit weight': 'unit weight',
  stiffness: 'stiffness',
  moment: 'moment',
};

const ends = (amount: Amount | undefined) => amount && { low: amount.low, high: amount.high };

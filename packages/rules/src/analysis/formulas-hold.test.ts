import type { Figure } from '@cribwright/messages';
import { evaluateOverRanges, parseFormula } from '@cribwright/messages';
import { english } from '@cribwright/messages/testing';
import { tallCrib, trailerOnCar, truckOnCar } from '@cribwright/model/testing';
import { expect, it } from 'vitest';
import { analyze } from './analyze.js';

/** Every figure inside a value, with those that it is computed from. */
function figuresIn(value: unknown, found = new Set<Figure>()): ReadonlySet<Figure> {
  if (typeof value !== 'object' || value === null) return found;
  if ('quantity' in value && 'source' in value && 'inputs' in value) {
    if (found.has(value as Figure)) return found;
    found.add(value as Figure);
  }
  for (const part of Object.values(value)) figuresIn(part, found);
  return found;
}

/** What the formula gives over its inputs; nothing where it is not known, or not computed. */
function fault(figure: Figure): string | undefined {
  const { formula, value } = figure;
  if (formula?.kind !== 'expression' || value === undefined) return undefined;
  const over = new Map(
    Object.entries(formula.over).flatMap(([n, f]) => (f.value ? [[n, f.value] as const] : [])),
  );
  if (over.size < Object.keys(formula.over).length) return undefined;
  const { low, high } = evaluateOverRanges(parseFormula(formula.text), over);
  const slack = 1e-6 * Math.max(1, Math.abs(low), Math.abs(high));
  return value.low >= low - slack && value.high <= high + slack
    ? undefined
    : `${english(figure.label)}: ${formula.text} gives ${low} to ${high}, and ${value.low} to ${value.high} is shown`;
}

it.each([
  ['a trailer on a car', trailerOnCar],
  ['a truck on a car', truckOnCar],
  ['a tall crib', tallCrib],
])('every formula of %s gives the value that is shown', (_, plan) => {
  const figures = [...figuresIn(analyze(plan, { push: true, paper: true }))];
  expect(figures.filter((f) => f.formula?.kind === 'expression').length).toBeGreaterThan(50);
  expect([...new Set(figures.flatMap((f) => fault(f) ?? []))]).toEqual([]);
});

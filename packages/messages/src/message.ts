import type { Rounding } from '@cribwright/units';
import type { QuantityKind } from './values/quantity-kind.js';
import type {
  Calculation,
  Count,
  Figure,
  FigureHole,
  Hole,
  List,
  Name,
  Phrase,
  Quantity,
  Range,
} from './values/values.js';

/** A name from a plan: it is the same in every language. */
export const name = (text: string): Name => ({ kind: 'name', text });
/** A count, or the number of a thing, without a unit. It picks the plural. */
export const count = (n: number): Count => ({ kind: 'count', count: n });
/**
 * Several things in a row, joined as the language joins them.
 *
 * @param join the last two by `and` or by `or`
 */
export const list = (items: readonly Hole[], join: List['join'] = 'and'): List => ({
  kind: 'list',
  items,
  join,
});
/**
 * A quantity with its unit, printed in the system of the reader.
 *
 * @param value in SI, a range or exact; `undefined` prints as not known
 * @param rounding which way the last digit may move: never toward danger
 */
export const quantity = (
  kind: QuantityKind,
  value: Range | number | undefined,
  rounding: Rounding,
): Quantity => ({
  kind: 'quantity',
  quantity: kind,
  value: typeof value === 'number' ? { low: value, high: value } : value,
  rounding,
});
/** What stands in the holes of a message, or in a list. */
export function holesOf(words: Phrase): readonly Hole[] {
  switch (words.kind) {
    case 'name':
      return [];
    case 'list':
      return words.items;
    case 'message':
      return Object.values(words.holes);
  }
}
/** A figure with its calculation written out, step by step. */
export const calculation = (figure: Figure): Calculation => ({ kind: 'calculation', figure });
/** A figure by its name and its value. */
export const inWords = (figure: Figure): FigureHole => ({ kind: 'figure', figure });

type ShownFigure = Pick<Figure, 'value' | 'quantity' | 'rounding' | 'source'>;

/** A figure's value in a sentence. */
export const shown = (f: ShownFigure): Quantity => ({
  kind: 'quantity',
  quantity: f.quantity,
  value: f.value,
  rounding: f.rounding,
  ...(f.source.kind === 'computed' ? {} : { stated: true }),
});

/**
 * One number as a figure of that kind would print it.
 *
 * @param value in SI, of the quantity of the figure
 */
export const shownAs = (f: ShownFigure, value: number): Quantity =>
  shown({ ...f, value: { low: value, high: value } });

/**
 * A demand beside its limit, each at its worst end, printed so that they read in the order in which they are.
 * `least` is for a limit that the value must not fall below.
 */
export function shownBeside(
  demand: ShownFigure,
  limit: ShownFigure,
  kind: 'most' | 'least' = 'most',
): { readonly demand: Quantity; readonly limit: Quantity } {
  const value = kind === 'most' ? demand.value?.high : demand.value?.low;
  const bound = kind === 'most' ? limit.value?.low : limit.value?.high;
  const [left, right] = [shown(demand), shown({ ...limit, quantity: demand.quantity })];
  if (value === undefined || bound === undefined) return { demand: left, limit: right };
  return {
    demand: { ...left, beside: { value: bound, side: 'demand', limit: kind } },
    limit: { ...right, beside: { value, side: 'limit', limit: kind } },
  };
}

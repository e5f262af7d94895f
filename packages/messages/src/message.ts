import type { Rounding } from '@cribwright/units';
import type { Figure } from './figure.js';
import type { QuantityKind } from './quantity-kind.js';

/** A value known to lie between two ends, in SI. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/**
 * What is said to a person, without its words: the id of a catalog entry and what goes into its holes. `wordsIn`
 * makes the words, in a language and a system of units.
 */
export interface Message {
  readonly kind: 'message';
  /** `crib-height.too-high` */
  readonly id: string;
  readonly holes: Readonly<Record<string, Hole>>;
  /** Transition: English words of a message that has no catalog entry yet. Holes in braces. */
  readonly english?: string;
}

/** Text that is the same in every language: a name from the plan, a title, a word of the plan language. */
export interface Name {
  readonly kind: 'name';
  readonly text: string;
}

/** A number of whole things. Catalogs choose singular or plural by it. */
export interface Count {
  readonly kind: 'count';
  readonly count: number;
}

/** A number with its kind. `undefined` says that it is not known. */
export interface Quantity {
  readonly kind: 'quantity';
  readonly value: Range | undefined;
  readonly quantity: QuantityKind;
  /** Which way the last printed digit may move: demands up, limits down. */
  readonly rounding: Rounding;
  /** Typed by a person or printed in a table: shown with all its digits, not as a computed number. */
  readonly stated?: boolean;
  /**
   * The number it is compared with in the same message. Both then print in the order in which they are: more digits
   * are added until they do.
   */
  readonly beside?: {
    readonly value: number;
    /** Whether this quantity is the limit of the two, and whether the limit is the most or the least allowed. */
    readonly side: 'demand' | 'limit';
    readonly limit: 'most' | 'least';
  };
}

/** A figure's calculation with its numbers put in: `1.5 × 16 in`. */
export interface Calculation {
  readonly kind: 'calculation';
  readonly figure: Figure;
}

/** A figure inside words: its label where a calculation is written with names, its value elsewhere. */
export interface FigureHole {
  readonly kind: 'figure';
  readonly figure: Figure;
}

export interface List {
  readonly kind: 'list';
  readonly items: readonly Hole[];
  /** `and`, `or`: as a sentence lists them. `plain`: with commas alone. `groups`: lists of their own, with semicolons. */
  readonly join: 'and' | 'or' | 'plain' | 'groups';
}

/**
 * What may stand in a hole. A bare string is English from a place that has not been converted to messages yet; it is
 * for the transition only and goes when the last rule is converted.
 */
export type Hole = Message | Name | Count | Quantity | Calculation | FigureHole | List | string;

/** A label, a case that governs, an assumption. A bare string is English from a place not yet converted. */
export type Phrase = Message | Name | List | string;

export const name = (text: string): Name => ({ kind: 'name', text });
export const count = (n: number): Count => ({ kind: 'count', count: n });
export const list = (items: readonly Hole[], join: List['join'] = 'and'): List => ({
  kind: 'list',
  items,
  join,
});
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
export const calculation = (figure: Figure): Calculation => ({ kind: 'calculation', figure });
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

/** One number as a figure of that kind would print it. */
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

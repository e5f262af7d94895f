import type { Rounding } from '@cribwright/units';
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
  /** In the SI unit of its kind, see `QuantityKind`. */
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
    /** In SI, as the quantity itself. */
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

/** Several things in a row. */
export interface List {
  readonly kind: 'list';
  readonly items: readonly Hole[];
  /**
   * `and`, `or`: as a sentence lists them. `plain`: with commas alone. `groups`: lists of their own, semicolons.
   * `none`: one after the other, as the pieces of a calculation.
   */
  readonly join: 'and' | 'or' | 'plain' | 'groups' | 'none';
}

/** What may stand in a hole. */
export type Hole = Message | Name | Count | Quantity | Calculation | FigureHole | List;

/** A label, a case that governs, an assumption. */
export type Phrase = Message | Name | List;

/**
 * Where a value comes from. `published` names title and locator; the two honest labels say that there is no
 * published source; `stated` is what the author of the plan wrote.
 */
export type SourceNote =
  | { readonly kind: 'published'; readonly title: string; readonly locator?: string }
  | { readonly kind: 'common practice' }
  | { readonly kind: 'from memory'; readonly title?: string }
  | { readonly kind: 'policy'; readonly policy: string; readonly limit: string; readonly of?: SourceNote }
  | { readonly kind: 'stated' }
  | { readonly kind: 'invented' }
  | { readonly kind: 'unknown' };

/** Where a figure comes from: as its value was given, or computed, and then it has a formula. */
export type FigureSource = SourceNote | { readonly kind: 'computed' };

/**
 * How a figure was computed.
 *
 * - `expression`: arithmetic over named figures, as `parseFormula` reads it: `{ratio} × {width}`.
 * - `words`: no short calculation gives it: read off the plan as with a tape, or the answer of a balance.
 */
export type Formula =
  | {
      readonly kind: 'expression';
      readonly text: string;
      readonly over: Readonly<Record<string, Figure>>;
    }
  | { readonly kind: 'words'; readonly words: Phrase };

/**
 * A number that a person may see, with its formula and its source. It names no unit and holds no words: `wordsIn`
 * shows it in a reader's language and units.
 */
export interface Figure {
  /** Stable within its support or finding: `height`, `heightLimit`, `capacity`, `load`, `use`. */
  readonly key: string;
  readonly label: Phrase;
  /** SI; `undefined` says that it is not known, which is never zero and never enough. */
  readonly value: Range | undefined;
  readonly quantity: QuantityKind;
  /** The unit in which its author wrote it, where it is shown as written; its counterpart in the other system. */
  readonly unit?: string;
  /** Which way a printed digit may move. Capacities and limits go down, demands and heights up. */
  readonly rounding: Rounding;
  readonly formula?: Formula;
  readonly inputs: readonly Figure[];
  readonly source: FigureSource;
  /** The line of the plan that it stands on, where there is one. */
  readonly ref?: { readonly element: string; readonly property?: string };
  /** Which end of a range, or which case, gave the value. */
  readonly governs?: Phrase;
  /** What the model behind it assumes. */
  readonly assumes?: readonly Phrase[];
}

import type { Rounding } from '@cribwright/units';
import type { Message, Phrase, Range } from './message.js';
import type { QuantityKind } from './quantity-kind.js';

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

export type { Message };

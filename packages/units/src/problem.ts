/** What is wrong with a written quantity, where, and what would be right. */
export interface QuantityProblem {
  readonly id:
    | 'number-missing'
    | 'number-malformed'
    | 'unit-missing'
    | 'unit-unknown'
    | 'unit-order'
    | 'dimension-wrong'
    | 'text-after';
  /** Offset in the text of the first character that is wrong: counted from 0. */
  readonly from: number;
  /** Offset just past the last one. */
  readonly to: number;
  /** Which fault of a number it is, for readers who have words of their own for it. */
  readonly number?: NumberFault;
  /** Which units do not follow one another. */
  readonly order?: OrderFault;
  /** In the reader's words, with what would be right. */
  readonly text: string;
  /** What the whole text should be, where that can be told. */
  readonly fix?: string;
}

/** What is wrong with the number of a quantity. */
export type NumberFault =
  | 'not a number'
  | 'comma'
  | 'decimal comma'
  | 'decimal and fraction'
  | 'zero'
  | 'two fractions'
  | 'too large';

/** Two units in a row that do not make one quantity. Units by their ids. */
export interface OrderFault {
  readonly fault: 'order' | 'whole' | 'below zero' | 'too many';
  readonly before: string;
  readonly unit: string;
  /** How many of `unit` make one of `before`. */
  readonly most: number;
}

/** What was read, or why it could not be. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: QuantityProblem };

export const fine = <T>(value: T): Reading<T> => ({ ok: true, value });
export const wrong = (problem: QuantityProblem): Reading<never> => ({ ok: false, problem });

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
  /** Offsets in the text: from, and just past. */
  readonly from: number;
  readonly to: number;
  /** In the reader's words, with what would be right. */
  readonly text: string;
  /** What the whole text should be, where that can be told. */
  readonly fix?: string;
}

export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: QuantityProblem };

export const fine = <T>(value: T): Reading<T> => ({ ok: true, value });
export const wrong = (problem: QuantityProblem): Reading<never> => ({ ok: false, problem });

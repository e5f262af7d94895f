/**
 * Maximize the amount of one column: columns × amounts = right side in the first `equalities` rows, at most the
 * right side in the rest; amounts not below zero.
 *
 * Columns lie one after the other: the entries of column j are `rows` and `values` from `starts[j]` up to
 * `starts[j + 1]`, those of the equations first.
 */
export interface LinearProgram {
  /** How many of the first rows are equations. */
  readonly equalities: number;
  /** How many columns there are. */
  readonly count: number;
  /** Where the entries of each column begin; one more than there are columns. */
  readonly starts: Int32Array;
  readonly rows: Int32Array;
  readonly values: Float64Array;
  /** The column whose amount is maximized, from 0. */
  readonly objective: number;
  /** Right side of each row, in the unit of that row. */
  readonly right: Float64Array;
  readonly limits: LimitRows;
}

/** The rows of the limits, one after the other: most prices of limits are nothing, and the rest can be picked out. */
export interface LimitRows {
  /** Where in each column the entries of limits begin. */
  readonly from: Int32Array;
  readonly starts: Int32Array;
  readonly columns: Int32Array;
  readonly values: Float64Array;
}

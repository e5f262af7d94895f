/** Element `i`, or NaN outside the array: a wrong index then shows in the residual instead of passing for zero. */
export const at = (values: Float64Array | Int32Array | readonly number[], i: number): number =>
  values[i] ?? Number.NaN;

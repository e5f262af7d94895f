/**
 * Element `i`, or NaN outside the array: a wrong index then shows in the residual instead of passing for zero.
 * One function for each kind of array, so that each stays a plain load in the machine.
 */
export const at = (values: Float64Array, i: number): number => values[i] ?? Number.NaN;
export const indexAt = (values: Int32Array, i: number): number => values[i] ?? -1;

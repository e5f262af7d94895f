/** What half of the values, and 95 of a hundred, do not exceed. */
export interface Quantiles {
  readonly median: number;
  readonly p95: number;
}

/** @param values at least one */
export function quantiles(values: readonly number[]): Quantiles {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
  return { median: at(0.5), p95: at(0.95) };
}

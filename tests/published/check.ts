import type { AnyReference } from './sources.js';

/** One number of ours held against one that somebody else published, or that a closed form gives. */
export interface Check {
  readonly what: string;
  readonly source: AnyReference;
  /** What the source says, in `unit`. */
  readonly expected: number;
  /** What ours says, in `unit`. Reference solvers load slowly: a promise may be returned. */
  readonly computed: () => number | Promise<number>;
  /** How far the two may be apart, in `unit`: half of the last digit that the source prints, unless said. */
  readonly within: number;
  readonly unit: string;
}

/** Checks about one subject. */
export interface Subject {
  readonly subject: string;
  readonly checks: readonly Check[];
}

export interface Verdict {
  readonly check: Check;
  readonly computed: number;
  readonly difference: number;
  readonly holds: boolean;
}

/** Runs one check. A check that throws, or gives no number, does not hold. */
export async function judge(check: Check): Promise<Verdict> {
  const computed = await Promise.resolve()
    .then(check.computed)
    .catch((reason: unknown) => {
      process.stderr.write(`${check.what}: ${reason instanceof Error ? reason.message : String(reason)}\n`);
      return Number.NaN;
    });
  const difference = computed - check.expected;
  return { check, computed, difference, holds: Math.abs(difference) <= check.within };
}

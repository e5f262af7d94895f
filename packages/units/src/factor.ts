/**
 * A unit's size in SI, as an exact fraction of whole numbers wherever the unit is defined exactly.
 * `pi` counts how often the number π stands above the line: 1 for a degree.
 */
export interface Factor {
  readonly above: bigint;
  readonly below: bigint;
  readonly pi: 0 | 1;
}

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? a : gcd(b, a % b));

const reduced = (above: bigint, below: bigint, pi: 0 | 1 = 0): Factor => {
  const shared = gcd(above, below);
  return { above: above / shared, below: below / shared, pi };
};

export const one: Factor = { above: 1n, below: 1n, pi: 0 };

/** `fraction(254n, 10_000n)`: an inch in meters. */
export const fraction = (above: bigint, below: bigint = 1n): Factor => reduced(above, below);

export const degrees: Factor = { above: 1n, below: 180n, pi: 1 };

export const product = (...factors: readonly Factor[]): Factor =>
  factors.reduce((a, b) => reduced(a.above * b.above, a.below * b.below), one);

export const quotient = (a: Factor, b: Factor): Factor => reduced(a.above * b.below, a.below * b.above);

/** Multiplying by the fraction's parts keeps `24 in` and back exactly 24, which a decimal factor does not. */
export const times = (value: number, f: Factor): number =>
  (value * (f.pi === 1 ? Math.PI : 1) * Number(f.above)) / Number(f.below);

export const over = (value: number, f: Factor): number =>
  (value * Number(f.below)) / Number(f.above) / (f.pi === 1 ? Math.PI : 1);

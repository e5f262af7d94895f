/** The same numbers at every run: 0 up to 1, from a seed (mulberry32). */
export function randomNumbers(seed: number) {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
  return {
    next,
    between: (low: number, high: number): number => low + (high - low) * next(),
    whole: (low: number, high: number): number => low + Math.floor(next() * (high - low + 1)),
  };
}

export type Random = ReturnType<typeof randomNumbers>;

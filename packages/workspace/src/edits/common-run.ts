/**
 * The longest common subsequence of two lists, as pairs of places in order. What both begin and end with is taken
 * first, so that a small change in a long list costs little.
 */
export function commonRun<T>(
  a: readonly T[],
  b: readonly T[],
  same: (one: T, other: T) => boolean,
): readonly (readonly [number, number])[] {
  const like = (i: number, j: number): boolean => {
    const [one, other] = [a[i], b[j]];
    return one !== undefined && other !== undefined && same(one, other);
  };
  let start = 0;
  while (like(start, start)) start++;
  let tail = 0;
  while (tail < Math.min(a.length, b.length) - start && like(a.length - 1 - tail, b.length - 1 - tail))
    tail++;
  const [m, n] = [a.length - start - tail, b.length - start - tail];
  const best = Array.from({ length: m + 1 }, () => new Uint32Array(n + 1));
  const at = (i: number, j: number): number => best[i]?.[j] ?? 0;
  const inner = (i: number, j: number): boolean => like(start + i, start + j);
  for (let i = m - 1; i >= 0; i--) {
    for (let j = n - 1; j >= 0; j--) {
      const row = best[i];
      if (row) row[j] = inner(i, j) ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
    }
  }
  const pairs: (readonly [number, number])[] = Array.from({ length: start }, (_, k) => [k, k] as const);
  for (let i = 0, j = 0; i < m && j < n; ) {
    if (inner(i, j)) pairs.push([start + i++, start + j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  for (let k = tail; k > 0; k--) pairs.push([a.length - k, b.length - k]);
  return pairs;
}

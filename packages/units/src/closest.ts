/**
 * The candidate that a mistyped word most likely meant, or `undefined` where none is near: at most one
 * slip for every three letters. Swapped neighbors count as one slip; so does a capital letter.
 */
export function closest(word: string, candidates: readonly string[]): string | undefined {
  const allowed = Math.max(1, Math.floor(word.length / 3));
  let best: { readonly word: string; readonly slips: number } | undefined;
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - word.length) > allowed) continue;
    const slips = distance(word.toLowerCase(), candidate.toLowerCase());
    // A one-letter word is one slip from every other: only its other case is near.
    if (slips > allowed || slips >= Math.max(word.length, candidate.length)) continue;
    if (best === undefined || slips < best.slips) best = { word: candidate, slips };
  }
  return best?.word;
}

/** Edits between two words: insert, drop, change, swap neighbors (optimal string alignment). */
function distance(a: string, b: string): number {
  let before: readonly number[] = [];
  let last: readonly number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let least = Math.min(change, (last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      }
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

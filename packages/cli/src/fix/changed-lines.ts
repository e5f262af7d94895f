import { type Paint, printable } from '../terminal/paint.js';

/** Lines that stand around a change, so that a reader knows where it is. */
const around = 2;

/** What differs between two texts, as lines with `-` and `+` before them and a few lines around. */
export function changedLines(path: string, before: string, after: string, paint: Paint): string {
  const [old, now] = [before.split(/\r?\n/), after.split(/\r?\n/)];
  const same = commonPlaces(old, now);
  const lines: string[] = [paint('quiet', printable(path))];
  let [i, j, shownTo] = [0, 0, 0];
  const quote = (from: number, to: number): void => {
    for (let k = Math.max(from, shownTo); k < to; k++) lines.push(`   ${printable(old[k] ?? '')}`);
  };
  for (const [oldEnd, nowEnd] of [...same, [old.length, now.length] as const]) {
    if (oldEnd > i || nowEnd > j) {
      quote(Math.max(0, i - around), i);
      for (const line of old.slice(i, oldEnd)) lines.push(paint('danger', ` - ${printable(line)}`));
      for (const line of now.slice(j, nowEnd)) lines.push(paint('good', ` + ${printable(line)}`));
      shownTo = oldEnd;
      quote(oldEnd, Math.min(old.length, oldEnd + around));
      shownTo = Math.min(old.length, oldEnd + around);
    }
    [i, j] = [oldEnd + 1, nowEnd + 1];
  }
  return `${lines.join('\n')}\n\n`;
}

/** The longest common subsequence of lines, as pairs of places. What both begin and end with is taken first. */
function commonPlaces(a: readonly string[], b: readonly string[]): readonly (readonly [number, number])[] {
  let start = 0;
  while (start < a.length && start < b.length && a[start] === b[start]) start++;
  let tail = 0;
  while (
    tail < a.length - start &&
    tail < b.length - start &&
    a[a.length - 1 - tail] === b[b.length - 1 - tail]
  )
    tail++;
  const [m, n] = [a.length - start - tail, b.length - start - tail];
  const best = Array.from({ length: m + 1 }, () => new Uint32Array(n + 1));
  const at = (i: number, j: number): number => best[i]?.[j] ?? 0;
  const like = (i: number, j: number): boolean => a[start + i] === b[start + j];
  for (let i = m - 1; i >= 0; i--) {
    for (let j = n - 1; j >= 0; j--) {
      const row = best[i];
      if (row) row[j] = like(i, j) ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
    }
  }
  const pairs: (readonly [number, number])[] = [];
  for (let k = 0; k < start; k++) pairs.push([k, k]);
  for (let i = 0, j = 0; i < m && j < n; ) {
    if (like(i, j)) pairs.push([start + i++, start + j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  for (let k = tail; k > 0; k--) pairs.push([a.length - k, b.length - k]);
  return pairs;
}

import type { TextChange } from '@cribwright/language';
import { commonRun } from './common-run.js';

/** What makes one text of another, as changes of whole lines: all else stays where it is. */
export function textChanges(before: string, after: string): readonly TextChange[] {
  const [old, now] = [linesOf(before), linesOf(after)];
  const starts = [0];
  for (const line of old) starts.push((starts.at(-1) ?? 0) + line.length);
  const changes: TextChange[] = [];
  let [i, j] = [0, 0];
  for (const [oldEnd, nowEnd] of [
    ...commonRun(old, now, (a, b) => a === b),
    [old.length, now.length] as const,
  ]) {
    if (oldEnd > i || nowEnd > j)
      changes.push({
        span: { start: starts[i] ?? before.length, end: starts[oldEnd] ?? before.length },
        text: now.slice(j, nowEnd).join(''),
      });
    [i, j] = [oldEnd + 1, nowEnd + 1];
  }
  return changes;
}

/** Lines with their ends. */
const linesOf = (text: string): readonly string[] => text.match(/[^\n]*\n|[^\n]+$/g) ?? [];

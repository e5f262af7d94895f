import { commonRun } from '@cribwright/workspace/internal';
import { type Paint, printable } from '../terminal/paint.js';

/** Lines that stand around a change, so that a reader knows where it is. */
const around = 2;

/** What differs between two texts, as lines with `-` and `+` before them and a few lines around. */
export function changedLines(path: string, before: string, after: string, paint: Paint): string {
  const [old, now] = [before.split(/\r?\n/), after.split(/\r?\n/)];
  const same = commonRun(old, now, (a, b) => a === b);
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

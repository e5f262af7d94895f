import { type Paint, printable } from '../terminal/paint.js';
import type { Range } from './report.js';

const tabs = 2;
/** Columns of a quoted line. A longer one is cut around its cause. */
const most = 120;

/** The line where it stands, its number in the margin, and the cause underlined. */
export function quote(text: string, range: Range, paint: Paint): readonly string[] {
  const line = lineAt(text, range.start.line);
  if (line === undefined) return [];
  const number = String(range.start.line + 1);
  const margin = ' '.repeat(number.length);
  const end = range.end.line === range.start.line ? range.end.character : line.trimEnd().length;
  const { before, cause, after } = cut(line, range.start.character, Math.max(range.start.character, end));
  const mark = '^'.repeat(Math.max(1, cause.length));
  return [
    `  ${paint('quiet', `${number} |`)} ${before}${paint('strong', cause)}${after}`.trimEnd(),
    `  ${paint('quiet', `${margin} |`)} ${' '.repeat(before.length)}${paint('danger', mark)}`,
  ];
}

const lineAt = (text: string, number: number): string | undefined => text.split(/\r?\n/, number + 1)[number];

/** The cause with what stands around it, as much as fits. What is left out shows as `…`. */
function cut(line: string, start: number, end: number) {
  const shown = (part: string) => printable(part).replaceAll('\t', ' '.repeat(tabs));
  const whole = line.length <= most;
  const room = Math.max(0, most - Math.min(end - start, most));
  const from = whole ? 0 : Math.max(0, start - Math.ceil(room / 2));
  const stop = whole ? line.length : Math.min(line.length, from + most);
  return {
    before: (from > 0 ? '…' : '') + shown(line.slice(from, start)),
    cause: shown(line.slice(start, Math.min(end, stop))) + (end > stop ? '…' : ''),
    after: shown(line.slice(Math.min(end, stop), stop)) + (end <= stop && stop < line.length ? '…' : ''),
  };
}

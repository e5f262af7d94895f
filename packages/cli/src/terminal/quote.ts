import type { Range } from '../report/report.js';
import { type Paint, printable } from './paint.js';

const tabs = 2;

/** The line where it stands, its number in the margin, and the cause underlined. */
export function quote(text: string, range: Range, paint: Paint): readonly string[] {
  const line = text.split(/\r?\n/)[range.start.line];
  if (line === undefined) return [];
  const number = String(range.start.line + 1);
  const margin = ' '.repeat(number.length);
  const shown = (part: string) => printable(part).replaceAll('\t', ' '.repeat(tabs));
  const end = range.end.line === range.start.line ? range.end.character : line.trimEnd().length;
  const before = shown(line.slice(0, range.start.character));
  const cause = shown(line.slice(range.start.character, end));
  const after = shown(line.slice(end));
  const mark = '^'.repeat(Math.max(1, cause.length));
  return [
    `  ${paint('quiet', `${number} |`)} ${before}${paint('strong', cause)}${after}`,
    `  ${paint('quiet', `${margin} |`)} ${' '.repeat(before.length)}${paint('danger', mark)}`,
  ];
}

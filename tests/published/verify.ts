import { judge } from './check.js';
import { cite } from './sources.js';
import { subjects } from './subjects.js';

/** Prints every check with its source, and fails if any number falls outside its tolerance. */

const digits = (x: number): string => (Number.isFinite(x) ? String(Number(x.toPrecision(7))) : 'no number');
const difference = (x: number): string => (x === 0 ? '0' : Number.isFinite(x) ? x.toExponential(1) : '-');

let ran = 0;
let failed = 0;
for (const { subject, checks } of subjects) {
  const rows: string[][] = [['what', 'expected', 'computed', 'difference', 'unit', 'verdict', 'source']];
  for (const check of checks) {
    const verdict = await judge(check);
    ran++;
    if (!verdict.holds) failed++;
    rows.push([
      check.what,
      digits(check.expected),
      digits(verdict.computed),
      difference(verdict.difference),
      check.unit,
      verdict.holds ? 'holds' : 'FAILS',
      cite(check.source),
    ]);
  }
  const widths = rows[0]?.map((_, column) => Math.max(...rows.map((r) => r[column]?.length ?? 0))) ?? [];
  const line = (cells: readonly string[]) =>
    cells.map((cell, i) => (i === 6 ? cell : cell.padEnd(widths[i] ?? 0))).join('  ');
  process.stdout.write(`\n${subject}\n${rows.map(line).join('\n')}\n`);
}
process.stdout.write(failed === 0 ? `\n${ran} checks, all hold.\n` : `\n${ran} checks, ${failed} FAIL.\n`);
process.exitCode = failed === 0 ? 0 : 1;

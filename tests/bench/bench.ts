import { statSync } from 'node:fs';
import { bundled } from '../bundled.js';
import { editTimes } from './edit-time.js';
import { startTimes } from './start-time.js';

// How long it takes until an edit is answered, beside a server that only reads the text: ratios say the same on every
// machine, times do not. `parts`: also how long the parts of the work take, and the panel in a browser.
const words = process.argv.slice(2);
const rounds = Number(words.find((word) => /^\d+$/.test(word)) ?? 40);

const cell = (of: string, width: number): string => of.padStart(width);
const ms = (value: number): string => value.toFixed(1);
let over = 0;

console.log(
  `Edit to diagnostics over stdio, ${rounds} times each. Median / 95th percentile, ms. Ours: all checks but the push; first: what is told at once.`,
);
console.log(
  `${'text (lines)'.padEnd(22)}${'edit'.padEnd(14)}${cell('ours', 18)}${cell('first', 9)}${cell('bare Langium', 18)}${cell('ratio', 8)}  budget`,
);
for await (const { size, lines, kind, ours, first, bare, most } of editTimes(rounds)) {
  const ratio = ours.median / bare.median;
  const faults = [
    ...(ratio > most ? [`OVER ${most}`] : []),
    ...(ours.p95 > 2 * ours.median ? ['95th OVER twice the median'] : []),
  ];
  over += faults.length;
  const budget = Number.isFinite(most) ? `at most ${most}; ` : '';
  console.log(
    [
      `${size} (${lines})`.padEnd(22),
      kind.padEnd(14),
      cell(`${ms(ours.median)} / ${ms(ours.p95)}`, 18),
      cell(ms(first.median), 9),
      cell(`${ms(bare.median)} / ${ms(bare.p95)}`, 18),
      cell(ratio.toFixed(2), 8),
      `  ${budget}95th at most twice: ${faults.length === 0 ? 'kept' : faults.join(', ')}`,
    ].join(''),
  );
}
/** One line: what it is, its value, the most it may be. */
function limited(what: string, value: number, most: number, shown: string): void {
  if (value > most) over++;
  console.log(`${what.padEnd(46)}${shown}, at most ${most}: ${value > most ? 'OVER' : 'kept'}`);
}
const start = await startTimes(Math.ceil(rounds / 4));
limited(
  'Start to first diagnostics, of bare Langium',
  start.ours.median / start.bare.median,
  0.9,
  `${(start.ours.median / start.bare.median).toFixed(2)} (${ms(start.ours.median)} ms)`,
);
const size = statSync(await bundled('server')).size / 1024 / 1024;
limited('Bundle of the server, MB of 1,048,576 bytes', size, 1, size.toFixed(3));
console.log(over === 0 ? 'Every budget is kept.' : `${over} budgets are not kept.`);
if (words.includes('parts')) await import('./part-times.js');

import { writeFileSync } from 'node:fs';
import type { Tally } from './suite/lines.js';

/** Prints how a suite went, writes the tally where `--tally=` says, and ends the process accordingly. */
export const tell = (name: string, { passed, failed, pending, lines }: Tally): never => {
  console.log(lines.join('\n'));
  console.log(`${name}: ${passed} passed, ${failed} failed${pending > 0 ? `, ${pending} skipped` : ''}`);
  const file = process.argv.find((word) => word.startsWith('--tally='))?.slice('--tally='.length);
  const failures = lines.filter((line) => !line.startsWith('pass'));
  if (file) writeFileSync(file, JSON.stringify({ passed, failed: failed + pending, failures }));
  process.exit(passed > 0 && failed + pending === 0 ? 0 : 1);
};

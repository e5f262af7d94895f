import process from 'node:process';
import { text } from 'node:stream/consumers';
import { today } from '@cribwright/language';
import { run } from './program.js';

// A reader that stops early, such as `head`, is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

void run(process.argv.slice(2), {
  cwd: process.cwd(),
  env: process.env,
  isTTY: process.stdout.isTTY,
  today: today(),
  out: (words) => process.stdout.write(words),
  err: (words) => process.stderr.write(words),
  stdin: () => text(process.stdin),
}).then((code) => {
  process.exitCode = code;
});

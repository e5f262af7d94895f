import process from 'node:process';
import { today } from '@cribwright/workspace';
import { readStandardInput } from './files/read-standard-input.js';
import { run } from './program.js';
import { standardOutput } from './terminal/standard-output.js';

const out = standardOutput(process.stdout);
// Where nothing can be told, the exit code still says how it ended.
const err = standardOutput(process.stderr);

// Until it is known how it ended, it could not be checked: Node's own codes would say "safe" or "unsafe".
process.exitCode = 2;
process.on('uncaughtException', (error) => {
  err.write(`Something broke, so the result is not complete: ${error.message}\n`);
  void err.ended().then(() => process.exit(2));
});

void run(process.argv.slice(2), {
  cwd: process.cwd(),
  env: process.env,
  isTTY: process.stdout.isTTY,
  today: today(),
  out: (words) => out.write(words),
  err: (words) => err.write(words),
  stdin: () => readStandardInput(process.stdin),
}).then(async (code) => {
  await out.ended();
  if (out.fault) err.write(`The output could not be written, so it is not complete: ${out.fault.message}\n`);
  await err.ended();
  process.exitCode = out.fault ? 2 : code;
});

import process from 'node:process';
import { type Message, message, name, wordsIn } from '@cribwright/messages';
import { today } from '@cribwright/workspace';
import { readStandardInput } from './files/read-standard-input.js';
import { run } from './program.js';
import { languageAsked } from './report/words.js';
import { printable } from './terminal/paint.js';
import { standardOutput } from './terminal/standard-output.js';

const out = standardOutput(process.stdout);
// Where nothing can be told, the exit code still says how it ended.
const err = standardOutput(process.stderr);

const args = process.argv.slice(2);
const words = wordsIn(languageAsked(args), 'us');
const tell = (said: Message): void => err.write(`${printable(words.message(said))}\n`);

// Until it is known how it ended, it could not be checked: Node's own codes would say "safe" or "unsafe".
process.exitCode = 2;
process.on('uncaughtException', (error) => {
  tell(message('cli.broke', { why: name(error.message) }));
  void err.ended().then(() => process.exit(2));
});

void run(args, {
  cwd: process.cwd(),
  env: process.env,
  isTTY: process.stdout.isTTY,
  today: today(),
  out: (words) => out.write(words),
  err: (words) => err.write(words),
  stdin: () => readStandardInput(process.stdin),
}).then(async (code) => {
  await out.ended();
  if (out.fault) tell(message('cli.output-fault', { why: name(out.fault.message) }));
  await err.ended();
  process.exitCode = out.fault ? 2 : code;
});

import { type Message, message, name, term, wordsIn } from '@cribwright/messages';
import { Command, CommanderError } from 'commander';
import { check } from './commands/check.js';
import type { CommandPart } from './commands/command.js';
import { compare } from './commands/compare.js';
import { draw } from './commands/draw.js';
import { explain } from './commands/explain.js';
import { fix } from './commands/fix.js';
import { helpIn, usageFault } from './commands/help.js';
import { lesson } from './commands/lesson.js';
import { materials } from './commands/materials.js';
import { sheet } from './commands/sheet.js';
import { test } from './commands/test.js';
import { version } from './report/version.js';
import { languageAsked, withLanguage } from './report/words.js';
import type { Io } from './terminal/io.js';
import { NotUnderstood } from './terminal/not-understood.js';
import { printable } from './terminal/paint.js';

const parts: readonly CommandPart[] = [check, test, compare, fix, draw, sheet, materials, lesson, explain];

/**
 * Runs one command line.
 *
 * @param args what follows the program's name
 * @returns the exit code. 2 also where the command line itself was not understood, or something broke.
 */
export async function run(args: readonly string[], io: Io): Promise<number> {
  let code = 0;
  const words = wordsIn(languageAsked(args), 'us');
  const say = (id: Message): string => words.message(id);
  const program = withLanguage(new Command('cribwright'), words)
    .version(version, '-V, --version', say(term('command.version')))
    .helpOption('-h, --help', say(term('command.help')))
    .helpCommand('help [command]', say(term('command.help-of')))
    .addHelpText('after', `\n${say(term('caution.heading'))}\n${say(term('caution.text'))}`)
    .configureHelp(helpIn(words))
    .configureOutput({ writeOut: io.out, writeErr: io.err, outputError: () => undefined })
    .enablePositionalOptions()
    .exitOverride();
  for (const part of parts) {
    part.add(
      program,
      io,
      (ended) => {
        code = ended;
      },
      words,
    );
  }
  for (const command of program.commands) command.copyInheritedSettings(program);
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    const lines = (said: readonly Message[]): void => io.err(`${printable(said.map(say).join(' '))}\n`);
    if (error instanceof CommanderError) {
      if (error.code === 'commander.help' || error.exitCode === 0) return error.exitCode === 0 ? 0 : 2;
      lines(usageFault(error, program));
      lines([term('command.see-help')]);
    } else if (error instanceof NotUnderstood) lines(error.said);
    else lines([message('cli.broke', { why: name(error instanceof Error ? error.message : String(error)) })]);
    return 2;
  }
}

import { caution } from '@cribwright/engine';
import { Command, CommanderError } from 'commander';
import { check } from './commands/check.js';
import type { CommandPart } from './commands/command.js';
import { compare } from './commands/compare.js';
import { draw } from './commands/draw.js';
import { explain } from './commands/explain.js';
import { lesson } from './commands/lesson.js';
import { materials } from './commands/materials.js';
import { sheet } from './commands/sheet.js';
import { test } from './commands/test.js';
import { version } from './report/version.js';
import type { Io } from './terminal/io.js';
import { printable } from './terminal/paint.js';

const parts: readonly CommandPart[] = [check, test, compare, draw, sheet, materials, lesson, explain];

/**
 * Runs one command line.
 *
 * @param args what follows the program's name
 * @returns the exit code. 2 also where the command line itself was not understood, or something broke.
 */
export async function run(args: readonly string[], io: Io): Promise<number> {
  let code = 0;
  const program = new Command('cribwright')
    .version(version)
    .addHelpText('after', `\nLimits of this tool.\n${caution}`)
    .configureOutput({ writeOut: io.out, writeErr: io.err })
    .showHelpAfterError('See what can be said with: cribwright --help')
    .exitOverride();
  for (const part of parts) {
    part.add(program, io, (ended) => {
      code = ended;
    });
  }
  for (const command of program.commands) command.copyInheritedSettings(program);
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    const why = error instanceof Error ? error.message : String(error);
    io.err(`Something broke, so nothing was checked: ${printable(why)}\n`);
    return 2;
  }
}

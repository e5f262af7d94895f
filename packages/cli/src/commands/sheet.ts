import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fieldSheet } from '@cribwright/drawing';
import { NotUnderstood } from '../drawing/choice.js';
import { planNamed, plansIn } from '../files/plans-in.js';
import { type SpeechOptions, speechOf, withLanguage, withUnits } from '../report/words.js';
import { printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

interface Options extends SpeechOptions {
  readonly output?: string;
  readonly plan?: string;
  readonly calculations?: boolean;
}

/** `cribwright sheet FILE -o plan.html`: the page that a crew carries. */
export const sheet: CommandPart = {
  add: (program, io, ends) =>
    withUnits(withLanguage(program.command('sheet')))
      .summary('write the field sheet of a plan: one page to print')
      .description(
        'Writes the page that a crew carries, as a web page that needs nothing else. Print it from any browser.\n\n' +
          'Ends with 0, or 2 when the file could not be read, or not all that its plans read from. A page of a plan ' +
          'that was not read whole says so.',
      )
      .argument('<file>', 'the plan file')
      .option('-o, --output <path>', 'where to write it; the standard output if left out')
      .option('--calculations', 'with the calculations: loads as built, and when a vehicle beneath gives way')
      .option('-p, --plan <title>', 'which plan, where the file holds several')
      .action(async (file: string, options: Options) => {
        try {
          const { plans, errors } = await plansIn(io, file);
          if (errors) ends(2);
          const { plan, analysis } = planNamed(plans, options.plan);
          const page = fieldSheet(plan, analysis, {
            calculations: options.calculations ?? false,
            words: speechOf(options).wordsFor(plan),
          });
          if (options.output === undefined) return io.out(page);
          const path = resolve(io.cwd, options.output);
          mkdirSync(dirname(path), { recursive: true });
          writeFileSync(path, page);
        } catch (error) {
          if (!(error instanceof NotUnderstood)) throw error;
          io.err(`${printable(error.message)}\n`);
          ends(2);
        }
      }),
};

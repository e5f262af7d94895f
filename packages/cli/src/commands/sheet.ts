import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fieldSheet } from '@cribwright/drawing';
import { term } from '@cribwright/messages';
import { planNamed, plansIn } from '../files/plans-in.js';
import { type SpeechOptions, speechOf, withLanguage, withUnits } from '../report/words.js';
import type { CommandPart } from './command.js';
import { flag } from './help.js';

interface Options extends SpeechOptions {
  readonly output?: string;
  readonly plan?: string;
  readonly calculations?: boolean;
}

/** `cribwright sheet FILE -o plan.html`: the page that a crew carries. */
export const sheet: CommandPart = {
  add: (program, io, ends, words) => {
    const say = words.message;
    withUnits(withLanguage(program.command('sheet'), words), words)
      .summary(say(term('command.sheet-summary')))
      .description(say(term('command.sheet')))
      .argument(`<${say(term('command.file-wanted'))}>`, say(term('command.plan-file')))
      .option(flag('-o, --output', say(term('command.path-wanted'))), say(term('command.output')))
      .option('--calculations', say(term('command.calculations')))
      .option(flag('-p, --plan', say(term('command.title-wanted'))), say(term('command.plan')))
      .action(async (file: string, options: Options) => {
        const { plans, errors } = await plansIn(io, file, speechOf(options));
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
      });
  },
};

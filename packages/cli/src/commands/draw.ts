import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { drawScene, svgOf, viewsOf } from '@cribwright/drawing';
import { term } from '@cribwright/messages';
import { type Asked, choiceOf, themeOf } from '../drawing/choice.js';
import { fileNames } from '../drawing/file-names.js';
import { type PlanToShow, planNamed, plansIn } from '../files/plans-in.js';
import { type SpeechOptions, speechOf, withLanguage, withUnits } from '../report/words.js';
import type { Io } from '../terminal/io.js';
import { NotUnderstood } from '../terminal/not-understood.js';
import type { CommandPart } from './command.js';
import { flag } from './help.js';

interface Options extends Asked, SpeechOptions {
  readonly output?: string;
  readonly plan?: string;
  readonly every?: boolean;
  readonly theme: string;
}

/** `cribwright draw FILE -o out.svg`: the drawing that the panel shows. */
export const draw: CommandPart = {
  add: (program, io, ends, words) => {
    const say = words.message;
    withUnits(withLanguage(program.command('draw'), words), words)
      .summary(say(term('command.draw-summary')))
      .description(say(term('command.draw')))
      .argument(`<${say(term('command.file-wanted'))}>`, say(term('command.plan-file')))
      .option(flag('-o, --output', say(term('command.path-wanted'))), say(term('command.output')))
      .option(flag('-p, --plan', say(term('command.title-wanted'))), say(term('command.plan')))
      .option(flag('-v, --view', say(term('command.view-wanted'))), say(term('command.view')))
      .option(flag('-s, --subject', say(term('command.name-wanted'))), say(term('command.subject')))
      .option(flag('--stage', say(term('command.number-wanted'))), say(term('command.stage')))
      .option(flag('--lost', say(term('command.loss-wanted'))), say(term('command.lost')))
      .option(flag('-t, --theme', say(term('command.theme-wanted'))), say(term('command.theme')), 'light')
      .option('--every', say(term('command.every')))
      .action(async (file: string, options: Options) => {
        const { plans, errors } = await plansIn(io, file, speechOf(options));
        if (errors) ends(2);
        if (options.every) writeEvery(plans, io, options);
        else writeOne(plans, io, options);
      });
  },
};

function writeOne(plans: readonly PlanToShow[], io: Io, options: Options): void {
  const one = planNamed(plans, options.plan);
  const words = speechOf(options).wordsFor(one.plan);
  const choice = choiceOf(options, one.plan, one.analysis, words);
  const svg = svgOf(drawScene(one.plan, one.analysis, choice, false, words), themeOf(options.theme));
  if (options.output === undefined) io.out(svg);
  else write(resolve(io.cwd, options.output), svg);
}

function writeEvery(plans: readonly PlanToShow[], io: Io, options: Options): void {
  if (options.output === undefined) throw new NotUnderstood(term('cli.which-folder'));
  const folder = resolve(io.cwd, options.output);
  const theme = themeOf(options.theme);
  const nameOf = fileNames();
  const { wordsFor } = speechOf(options);
  for (const { plan, analysis } of plans) {
    const words = wordsFor(plan);
    for (const view of viewsOf(plan, analysis)) {
      const choice = choiceOf({ view: view.id }, plan, analysis);
      const path = join(folder, nameOf([plan.title, view.id], 'svg'));
      write(path, svgOf(drawScene(plan, analysis, choice, false, words), theme));
      io.out(`${path}\n`);
    }
  }
}

function write(path: string, svg: string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, svg);
}

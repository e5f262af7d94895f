import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { drawScene, svgOf, viewsOf } from '@cribwright/drawing';
import { type Asked, choiceOf, NotUnderstood, themeOf } from '../drawing/choice.js';
import { fileNames } from '../drawing/file-names.js';
import { type PlanToShow, planNamed, plansIn } from '../files/plans-in.js';
import { type SpeechOptions, speechOf, withLanguage, withUnits } from '../report/words.js';
import type { Io } from '../terminal/io.js';
import { printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

interface Options extends Asked, SpeechOptions {
  readonly output?: string;
  readonly plan?: string;
  readonly every?: boolean;
  readonly theme: string;
}

/** `cribwright draw FILE -o out.svg`: the drawing that the panel shows. */
export const draw: CommandPart = {
  add: (program, io, ends) =>
    withUnits(withLanguage(program.command('draw')))
      .summary('draw a plan as SVG')
      .description(
        'Draws one view of a plan, as the panel in the editor shows it. With --every, draws all views of all ' +
          'plans in the file into the folder that -o names.\n\nEnds with 0, or 2 when the file could not be read, or not ' +
          'all that its plans read from. A drawing of a plan that was not read whole says so.',
      )
      .argument('<file>', 'the plan file')
      .option('-o, --output <path>', 'where to write it; the standard output if left out')
      .option('-p, --plan <title>', 'which plan, where the file holds several')
      .option(
        '-v, --view <view>',
        'top, side, end, crib, strut, "side push", utilization, timeline, ground, 3d …',
      )
      .option('-s, --subject <name>', 'the crib or strut of a close-up')
      .option('--stage <number>', 'how far it is built: 0 is as found')
      .option('--lost <what>', 'what has given way')
      .option('-t, --theme <theme>', 'light, dark, high-contrast, high-contrast-light', 'light')
      .option('--every', 'all views of all plans')
      .action(async (file: string, options: Options) => {
        try {
          const { plans, errors } = await plansIn(io, file);
          if (errors) ends(2);
          if (options.every) writeEvery(plans, io, options);
          else writeOne(plans, io, options);
        } catch (error) {
          if (!(error instanceof NotUnderstood)) throw error;
          io.err(`${printable(error.message)}\n`);
          ends(2);
        }
      }),
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
  if (options.output === undefined) throw new NotUnderstood('Say which folder to write into: -o FOLDER.');
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

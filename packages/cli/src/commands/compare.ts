import { mkdirSync, realpathSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import type { Phrase } from '@cribwright/messages';
import { compareVersions } from '@cribwright/workspace';
import { Option } from 'commander';
import { compareJson } from '../compare/compare-json.js';
import { compareMarkdown } from '../compare/compare-markdown.js';
import { comparePage } from '../compare/compare-page.js';
import { compareText, wordsFor } from '../compare/compare-text.js';
import { type CompareReport, compareExitCode } from '../compare/outcome.js';
import { readSides, type Side, sideOf } from '../compare/versions.js';
import { type SpeechOptions, withLanguage, withUnits } from '../report/words.js';
import type { Io } from '../terminal/io.js';
import { paintFor, printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

interface Options extends SpeechOptions {
  readonly format: Format;
  readonly in: string;
  readonly output?: string;
}

/** `cribwright compare BEFORE [AFTER]`: what changed in meaning, and what is unsafe now. */
export const compare: CommandPart = {
  add: (program, io, ends) =>
    withUnits(withLanguage(program.command('compare')))
      .summary('say what changed between two versions of plans, and what is unsafe now')
      .description(
        'Compares files, folders or git revisions: lines that changed in meaning, findings that are new, gone or ' +
          'accepted, figures that moved, and stock. Layout and comments do not count. Renamed and moved plans and ' +
          'supports are recognized. With one revision, compares it with the files in this folder.\n\n' +
          'Ends with 0 when no plan is less safe than it was, 1 when one is, 2 when something could not be read.',
      )
      .argument('<before>', 'a file, a folder, or a git revision such as main or HEAD~1')
      .argument('[after]', 'the same; the files in this folder if left out')
      .addOption(
        new Option('-f, --format <format>', 'how to print it').choices(Object.keys(formats)).default('text'),
      )
      .option('--in <folder>', 'of a git revision: the folder whose plans are compared', '.')
      .option('-o, --output <path>', 'where to write it; the standard output if left out')
      .action(async (before: string, after: string | undefined, options: Options) => {
        const within = realpathSync(resolve(io.cwd, options.in));
        const sides = [
          sideOf(io.cwd, before),
          after === undefined ? here(within) : sideOf(io.cwd, after),
        ] as const;
        const [old, now] = sides;
        for (const [named, side] of [
          [before, old],
          [after ?? '', now],
        ] as const) {
          if (isSide(side)) continue;
          io.err(`${printable(named)}: ${printable(wordsFor(options).message(side))}\n`);
          ends(2);
        }
        if (!isSide(old) || !isSide(now)) return;
        const read = await readSides(io, [old, now], within);
        const [was, is] = read;
        const report: CompareReport = {
          before,
          after: after ?? '',
          comparison: compareVersions(was.version, is.version),
          unreadable: read.flatMap((r) => r.unreadable),
        };
        const text = formats[options.format](report, io, options);
        if (options.output === undefined) io.out(text);
        else {
          const path = resolve(io.cwd, options.output);
          mkdirSync(dirname(path), { recursive: true });
          writeFileSync(path, text);
        }
        ends(compareExitCode(report));
      }),
};

const here = (path: string): Side => ({ kind: 'folder', path });

const isSide = (side: Side | Phrase): side is Side =>
  side.kind === 'file' || side.kind === 'folder' || side.kind === 'revision';

type Format = keyof typeof formats;
const formats = {
  text: (report: CompareReport, io: Io, options: Options) =>
    compareText(report, options.output === undefined ? paintFor(io, io.env) : (_tone, text) => text, options),
  markdown: (report: CompareReport, _io: Io, options: Options) => compareMarkdown(report, options),
  html: (report: CompareReport, _io: Io, options: Options) => comparePage(report, options),
  json: (report: CompareReport, _io: Io, options: Options) => compareJson(report, options),
} as const;

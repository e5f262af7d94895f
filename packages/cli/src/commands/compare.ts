import { mkdirSync, realpathSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { type Phrase, term } from '@cribwright/messages';
import { compareVersions } from '@cribwright/workspace';
import { compareJson } from '../compare/compare-json.js';
import { compareMarkdown } from '../compare/compare-markdown.js';
import { comparePage } from '../compare/compare-page.js';
import { compareText } from '../compare/compare-text.js';
import { type CompareReport, compareExitCode } from '../compare/outcome.js';
import { readSides, type Side, sideOf } from '../compare/versions.js';
import {
  choiceOption,
  type Speech,
  type SpeechOptions,
  speechOf,
  withLanguage,
  withUnits,
} from '../report/words.js';
import { type Paint, paintFor, plain, printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';
import { flag } from './help.js';

interface Options extends SpeechOptions {
  readonly format: Format;
  readonly in: string;
  readonly output?: string;
}

/** `cribwright compare BEFORE [AFTER]`: what changed in meaning, and what is unsafe now. */
export const compare: CommandPart = {
  add: (program, io, ends, words) => {
    const say = words.message;
    withUnits(withLanguage(program.command('compare'), words), words)
      .summary(say(term('command.compare-summary')))
      .description(say(term('command.compare')))
      .argument(`<${say(term('command.revision-wanted'))}>`, say(term('command.compare-before')))
      .argument(`[${say(term('command.later-wanted'))}]`, say(term('command.compare-after')))
      .addOption(
        choiceOption(
          flag('-f, --format', say(term('command.format-wanted'))),
          say(term('command.format')),
          Object.keys(formats),
          'text',
        ),
      )
      .option(flag('--in', say(term('command.folder-wanted'))), say(term('command.compare-in')), '.')
      .option(flag('-o, --output', say(term('command.path-wanted'))), say(term('command.output')))
      .action(async (before: string, after: string | undefined, options: Options) => {
        const speech = speechOf(options);
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
          io.err(`${printable(named)}: ${printable(speech.words.message(side))}\n`);
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
        const text = formats[options.format](
          report,
          speech,
          options.output === undefined ? paintFor(io, io.env) : plain,
        );
        if (options.output === undefined) io.out(text);
        else {
          const path = resolve(io.cwd, options.output);
          mkdirSync(dirname(path), { recursive: true });
          writeFileSync(path, text);
        }
        ends(compareExitCode(report));
      });
  },
};

const here = (path: string): Side => ({ kind: 'folder', path });

const isSide = (side: Side | Phrase): side is Side =>
  side.kind === 'file' || side.kind === 'folder' || side.kind === 'revision';

type Format = keyof typeof formats;
const formats = {
  text: (report: CompareReport, speech: Speech, paint: Paint) => compareText(report, paint, speech),
  markdown: compareMarkdown,
  html: comparePage,
  json: compareJson,
} as const;

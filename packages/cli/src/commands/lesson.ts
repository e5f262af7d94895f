import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { message, name, term } from '@cribwright/messages';
import { sayErrors } from '../files/plans-in.js';
import { readReport } from '../files/read-report.js';
import { handout } from '../lesson/handout.js';
import { hasErrors } from '../report/outcome.js';
import { type SpeechOptions, speechOf, withLanguage, withUnits } from '../report/words.js';
import { NotUnderstood } from '../terminal/not-understood.js';
import { printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';
import { flag } from './help.js';

interface Options extends SpeechOptions {
  readonly output?: string;
  readonly key?: boolean;
}

/** `cribwright lesson FILE -o handout.html [--key]`: the handout of a lesson, or the instructor's copy. */
export const lesson: CommandPart = {
  add: (program, io, ends, help) => {
    const say = help.message;
    withUnits(withLanguage(program.command('lesson'), help), help)
      .summary(say(term('command.lesson-summary')))
      .description(say(term('command.lesson')))
      .argument(`<${say(term('command.file-wanted'))}>`, say(term('command.lesson-file')))
      .option(flag('-o, --output', say(term('command.path-wanted'))), say(term('command.output')))
      .option('-k, --key', say(term('command.key')))
      .action(async (file: string, options: Options) => {
        const speech = speechOf(options);
        const { words } = speech;
        const report = await readReport(io, [file]);
        const [bad] = report.unreadable;
        const lessons = report.files.flatMap((f) => f.lessons);
        const [first] = lessons;
        if (first === undefined)
          throw new NotUnderstood(
            bad === undefined
              ? message('cli.no-lesson', { path: name(file) })
              : message('cli.path-not-read', { path: name(bad.path), why: bad.why }),
          );
        const page = lessons
          .map((l) => handout(l, speech, options.key ?? false, hasErrors(report)))
          .join('\n');
        if (options.output === undefined) io.out(page);
        else {
          const path = resolve(io.cwd, options.output);
          mkdirSync(dirname(path), { recursive: true });
          writeFileSync(path, page);
        }
        sayErrors(io, report, speech);
        if (hasErrors(report)) ends(2);
        for (const { name: exercise, answer } of lessons.flatMap((l) => l.exercises)) {
          if (answer.kind !== 'none') continue;
          io.err(`${printable(words.message(message('cli.no-key', { exercise, why: answer.why })))}\n`);
          ends(2);
        }
      });
  },
};

import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { wordsIn } from '@cribwright/messages';
import { sayErrors } from '../files/plans-in.js';
import { readReport } from '../files/read-report.js';
import { handout } from '../lesson/handout.js';
import { hasErrors } from '../report/outcome.js';
import { printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

interface Options {
  readonly output?: string;
  readonly key?: boolean;
}

/** `cribwright lesson FILE -o handout.html [--key]`: the handout of a lesson, or the instructor's copy. */
export const lesson: CommandPart = {
  add: (program, io, ends) =>
    program
      .command('lesson')
      .summary('write the handout of a lesson, or its key')
      .description(
        'Writes a lesson as a web page to print. With --key, the instructor’s copy: every answer with its sum, ' +
          'worked out from the plan. Ends with 2 when an exercise has no key, or when not all that the lesson ' +
          'reads from could be read: then the page says so.',
      )
      .argument('<file>', 'the file with the lesson')
      .option('-o, --output <path>', 'where to write it; the standard output if left out')
      .option('-k, --key', 'with the answers')
      .action(async (file: string, options: Options) => {
        const report = await readReport(io, [file]);
        const [bad] = report.unreadable;
        const lessons = report.files.flatMap((f) => f.lessons);
        const [first] = lessons;
        if (first === undefined) {
          io.err(
            bad === undefined
              ? `There is no lesson in ${printable(file)}.\n`
              : `${printable(bad.path)}: ${printable(bad.why)}\n`,
          );
          return ends(2);
        }
        const page = lessons.map((l) => handout(l, options.key ?? false, hasErrors(report))).join('\n');
        if (options.output === undefined) io.out(page);
        else {
          const path = resolve(io.cwd, options.output);
          mkdirSync(dirname(path), { recursive: true });
          writeFileSync(path, page);
        }
        sayErrors(io, report);
        if (hasErrors(report)) ends(2);
        const say = wordsIn('en', 'us');
        const keyless = lessons.flatMap((l) => l.exercises).filter((e) => e.answer.kind === 'none');
        for (const { name, answer } of keyless)
          io.err(
            `${printable(say.message(name))} has no key. ${answer.kind === 'none' ? printable(say.message(answer.why)) : ''}\n`,
          );
        if (keyless.length > 0) ends(2);
      }),
};

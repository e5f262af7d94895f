import { Option } from 'commander';
import { readReport } from '../files/read-report.js';
import { jsonReport } from '../report/json.js';
import { exitCode } from '../report/outcome.js';
import type { CheckReport } from '../report/report.js';
import { ruleNotes } from '../report/rule-notes.js';
import { sarifReport } from '../report/sarif.js';
import { textReport } from '../report/text.js';
import { type Speech, type SpeechOptions, speechOf, withLanguage, withUnits } from '../report/words.js';
import type { Io } from '../terminal/io.js';
import { paintFor } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

/** `cribwright check PATH…`: is anything in these plans unsafe? */
export const check: CommandPart = {
  add: (program, io, ends) =>
    withUnits(withLanguage(program.command('check')))
      .summary('say what is unsafe in the plans, and why')
      .description(
        'Reads plan files, or every .crib file in a folder, and says what is unsafe, with the sum and what would ' +
          'make it right. `-` reads a plan from the standard input.\n\n' +
          'Ends with 0 when nothing unsafe was found, 1 when something was, 2 when a file could not be read, there ' +
          'was no plan, the output could not be written, or ' +
          'a check could not run.',
      )
      .argument('<path...>', 'files or folders')
      .addOption(formatOption())
      .action(async (paths: string[], options: SpeechOptions & { format: Format }) => {
        const report = await readReport(io, paths);
        io.out(formats[options.format](report, io, speechOf(options)));
        ends(exitCode(report));
      }),
};

type Format = keyof typeof formats;
const formats = {
  text: (report: CheckReport, io: Io, speech: Speech) => textReport(report, paintFor(io, io.env), speech),
  json: (report: CheckReport, _io: Io, speech: Speech) => jsonReport(report, speech),
  sarif: (report: CheckReport, _io: Io, speech: Speech) =>
    sarifReport(report, ruleNotes(speech.words), speech),
} as const;

const formatOption = () =>
  new Option('-f, --format <format>', 'how to print it').choices(Object.keys(formats)).default('text');

import { term } from '@cribwright/messages';
import { readReport } from '../files/read-report.js';
import { jsonReport } from '../report/json.js';
import { exitCode } from '../report/outcome.js';
import type { CheckReport } from '../report/report.js';
import { ruleNotes } from '../report/rule-notes.js';
import { sarifReport } from '../report/sarif.js';
import { textReport } from '../report/text.js';
import {
  choiceOption,
  type Speech,
  type SpeechOptions,
  speechOf,
  withLanguage,
  withUnits,
} from '../report/words.js';
import type { Io } from '../terminal/io.js';
import { paintFor } from '../terminal/paint.js';
import type { CommandPart } from './command.js';
import { flag } from './help.js';

/** `cribwright check PATH…`: is anything in these plans unsafe? */
export const check: CommandPart = {
  add: (program, io, ends, words) => {
    const say = words.message;
    withUnits(withLanguage(program.command('check'), words), words)
      .summary(say(term('command.check-summary')))
      .description(say(term('command.check')))
      .argument(`<${say(term('command.path-wanted'))}...>`, say(term('command.paths')))
      .addOption(
        choiceOption(
          flag('-f, --format', say(term('command.format-wanted'))),
          say(term('command.format')),
          Object.keys(formats),
          'text',
        ),
      )
      .action(async (paths: string[], options: SpeechOptions & { format: Format }) => {
        const report = await readReport(io, paths);
        io.out(formats[options.format](report, io, speechOf(options)));
        ends(exitCode(report));
      });
  },
};

type Format = keyof typeof formats;
const formats = {
  text: (report: CheckReport, io: Io, speech: Speech) => textReport(report, paintFor(io, io.env), speech),
  json: (report: CheckReport, _io: Io, speech: Speech) => jsonReport(report, speech),
  sarif: (report: CheckReport, _io: Io, speech: Speech) =>
    sarifReport(report, ruleNotes(speech.words), speech),
} as const;

import { readReport } from '../files/read-report.js';
import { expectationReport, expectationsHeld } from '../report/expectations.js';
import { textReport } from '../report/text.js';
import { type SpeechOptions, speechOf, withLanguage, withUnits } from '../report/words.js';
import { paintFor } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

/** `cribwright test PATH…`: does every plan come out as its `expect` lines say? */
export const test: CommandPart = {
  add: (program, io, ends) =>
    withUnits(withLanguage(program.command('test')))
      .summary('say whether every plan comes out as its expect lines say')
      .description(
        'Checks the plans and compares what was found with what their `expect` lines say. A danger that no ' +
          '`expect` names counts as a surprise.\n\nEnds with 0 when all came out as expected, 1 when not, ' +
          '2 when a file could not be read or a check could not run.',
      )
      .argument('<path...>', 'files or folders')
      .option('-q, --quiet', 'leave the findings out')
      .action(async (paths: string[], options: SpeechOptions & { quiet?: boolean }) => {
        const report = await readReport(io, paths);
        const paint = paintFor(io, io.env);
        const speech = speechOf(options);
        if (!options.quiet) io.out(`${textReport(report, paint, speech)}\n`);
        io.out(expectationReport(report, paint, speech));
        ends(expectationsHeld(report));
      }),
};

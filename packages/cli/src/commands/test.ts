import { term } from '@cribwright/messages';
import { readReport } from '../files/read-report.js';
import { expectationReport, expectationsHeld } from '../report/expectations.js';
import { textReport } from '../report/text.js';
import { type SpeechOptions, speechOf, withLanguage, withUnits } from '../report/words.js';
import { paintFor } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

/** `cribwright test PATH…`: does every plan come out as its `expect` lines say? */
export const test: CommandPart = {
  add: (program, io, ends, words) => {
    const say = words.message;
    withUnits(withLanguage(program.command('test'), words), words)
      .summary(say(term('command.test-summary')))
      .description(say(term('command.test')))
      .argument(`<${say(term('command.path-wanted'))}...>`, say(term('command.paths')))
      .option('-q, --quiet', say(term('command.quiet')))
      .action(async (paths: string[], options: SpeechOptions & { quiet?: boolean }) => {
        const report = await readReport(io, paths);
        const paint = paintFor(io, io.env);
        const speech = speechOf(options);
        if (!options.quiet) io.out(`${textReport(report, paint, speech)}\n`);
        io.out(expectationReport(report, paint, speech));
        ends(expectationsHeld(report));
      });
  },
};

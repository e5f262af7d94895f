import { rules } from '@cribwright/engine';
import { languageCodes, rulePageText } from '@cribwright/language';
import { wordsIn } from '@cribwright/messages';
import { closest } from '@cribwright/units';
import { markdownText } from '../terminal/markdown.js';
import { type Paint, paintFor, printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

/** `cribwright explain RULE`: the page of a rule, or of a message about the writing. Without a rule, the list of them. */
export const explain: CommandPart = {
  add: (program, io, ends) =>
    program
      .command('explain')
      .summary('say what a rule protects against, its sum and its sources')
      .description('Prints the page of a rule. Without a rule, lists them all.')
      .argument('[rule]', 'the id that stands beside a finding, such as crib-height')
      .action((rule: string | undefined) => {
        const paint = paintFor(io, io.env);
        const page = rule === undefined ? undefined : rulePageText(rule, 'en');
        if (rule === undefined) io.out(ruleList(paint));
        else if (page !== undefined) io.out(markdownText(page, paint));
        else {
          const near = closest(rule, [...rules.map((r) => r.id), ...languageCodes]);
          io.err(
            `There is no rule ${printable(rule)}.${near === undefined ? '' : ` Did you mean ${near}?`}\n` +
              'See the list with: cribwright explain\n',
          );
          ends(2);
        }
      }),
};

/** The rules by family, each with its name. */
function ruleList(paint: Paint): string {
  const widest = Math.max(0, ...rules.map((r) => r.id.length));
  const words = wordsIn('en', 'us');
  const families = [...new Set(rules.map((r) => r.family))];
  return families
    .flatMap((family) => [
      paint('strong', family),
      ...rules
        .filter((r) => r.family === family)
        .map((r) => `  ${r.id.padEnd(widest)}  ${words.message(r.title)}`),
      '',
    ])
    .concat(paint('strong', 'the writing'), ...languageCodes.map((code) => `  ${code}`), '')
    .join('\n');
}

import { languageCodes } from '@cribwright/language';
import { type Locale, message, name, term, type Words, wordsIn } from '@cribwright/messages';
import { families, familyTitle, rules } from '@cribwright/rules';
import { rulePageText } from '@cribwright/server';
import { closest } from '@cribwright/units';
import { withLanguage } from '../report/words.js';
import { markdownText } from '../terminal/markdown.js';
import { type Paint, paintFor, printable } from '../terminal/paint.js';
import type { CommandPart } from './command.js';

/**
 * `cribwright explain RULE`: the page of a rule, or of a message about the syntax, in the language asked for.
 * Without a rule, the list of them.
 */
export const explain: CommandPart = {
  add: (program, io, ends, help) => {
    const say = help.message;
    withLanguage(program.command('explain'), help)
      .summary(say(term('command.explain-summary')))
      .description(say(term('command.explain')))
      .argument(`[${say(term('command.rule-wanted'))}]`, say(term('command.rule')))
      .action((rule: string | undefined, { language }: { language: Locale }) => {
        const words = wordsIn(language, 'us');
        const paint = paintFor(io, io.env);
        const page = rule === undefined ? undefined : rulePageText(rule, language);
        if (rule === undefined) io.out(ruleList(paint, words));
        else if (page !== undefined) io.out(markdownText(page, paint));
        else {
          const near = closest(rule, [...rules.map((r) => r.id), ...languageCodes]);
          io.err(
            `${words.message(message('cli.no-rule', { rule: name(printable(rule)) }))}${near === undefined ? '' : ` ${words.message(message('cli.did-you-mean', { near: name(near) }))}`}\n${words.message(term('cli.see-list'))}\n`,
          );
          ends(2);
        }
      });
  },
};

/** The rules by family, each with its name. */
function ruleList(paint: Paint, words: Words): string {
  const widest = Math.max(0, ...rules.map((r) => r.id.length));
  return families
    .flatMap((family) => [
      paint('strong', words.message(familyTitle[family])),
      ...rules
        .filter((r) => r.family === family)
        .map((r) => `  ${r.id.padEnd(widest)}  ${words.message(r.title)}`),
      '',
    ])
    .concat(
      paint('strong', words.message(term('cli.syntax'))),
      ...languageCodes.map((code) => `  ${code}`),
      '',
    )
    .join('\n');
}

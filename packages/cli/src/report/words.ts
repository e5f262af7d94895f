import { type Locale, type Words, wordsIn } from '@cribwright/messages';
import { type Command, Option } from 'commander';
import type { PlanReport } from './report.js';

/** The language and the units of what is printed. */
export interface Speech {
  /** The words of what belongs to no plan. */
  readonly words: Words;
  /** The words of a plan's report. */
  readonly wordsOf: (plan: PlanReport) => Words;
}

/** `plan`: the units that each plan asks for. */
export type UnitsAsked = 'plan' | 'us' | 'si';

export interface SpeechOptions {
  readonly language: Locale;
  readonly units: UnitsAsked;
}

/**
 * English in the units of each plan unless told otherwise. The language of the machine does not count: the same
 * command prints the same report on every machine.
 */
export const speechOf = ({ language, units }: SpeechOptions): Speech => ({
  words: wordsIn(language, units === 'plan' ? 'us' : units),
  wordsOf: (plan) => wordsIn(language, units === 'plan' ? plan.reply.plan.display : units),
});

/** English, in the units of each plan. */
export const plainSpeech: Speech = speechOf({ language: 'en', units: 'plan' });

/** Adds `--language` to a command. */
export const withLanguage = (command: Command): Command =>
  command.addOption(
    new Option('-l, --language <language>', 'the language of the report').choices(['en', 'es']).default('en'),
  );

/** Adds `--units` to a command. */
export const withUnits = (command: Command): Command =>
  command.addOption(
    new Option('-u, --units <units>', 'US or SI units; plan: as each plan says')
      .choices(['plan', 'us', 'si'])
      .default('plan'),
  );

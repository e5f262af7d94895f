import { type Locale, type Words, wordsIn } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { type Command, Option } from 'commander';
import type { PlanReport } from './report.js';

/** The language and the units of what is printed. */
export interface Speech {
  /** The words of what belongs to no plan. */
  readonly words: Words;
  /** The words of a plan's report. */
  readonly wordsOf: (plan: PlanReport) => Words;
  /** The words of a plan's drawings and field sheet. */
  readonly wordsFor: (plan: Pick<Plan, 'display'>) => Words;
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
export function speechOf({ language, units }: SpeechOptions): Speech {
  const wordsFor: Speech['wordsFor'] = ({ display }) => wordsIn(language, units === 'plan' ? display : units);
  return {
    words: wordsIn(language, units === 'plan' ? 'us' : units),
    wordsOf: (plan) => wordsFor(plan.reply.plan),
    wordsFor,
  };
}

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

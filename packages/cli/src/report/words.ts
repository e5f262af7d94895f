import { type Locale, list, message, name, term, type Words, wordsIn } from '@cribwright/messages';
import type { Plan } from '@cribwright/model';
import { type Command, Option } from 'commander';
import { NotUnderstood } from '../terminal/not-understood.js';
import type { PlanReport } from './report.js';

/** The language and the units of what is printed. */
export interface Speech {
  /** The words of what belongs to no plan. */
  readonly words: Words;
  /** The words of a plan's report. */
  readonly wordsOf: (plan: Pick<PlanReport, 'reply'>) => Words;
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

const languages: readonly Locale[] = ['en', 'es'];

/**
 * The language that a command line asks for, read before anything else of it is, so that its help and what is wrong
 * with it are said in that language. English where it names none that there is.
 */
export function languageAsked(args: readonly string[]): Locale {
  const end = args.indexOf('--');
  const options = end < 0 ? args : args.slice(0, end);
  const named = options.flatMap((arg, i) =>
    arg === '-l' || arg === '--language'
      ? (options[i + 1] ?? [])
      : (/^(?:--language=|-l)(.+)$/.exec(arg)?.[1] ?? []),
  );
  return languages.find((l) => l === named.at(-1)) ?? 'en';
}

/** An option with a few values. Another value is answered with those that there are. */
export const choiceOption = (
  flags: string,
  text: string,
  values: readonly string[],
  preset: string,
): Option =>
  new Option(flags, text)
    .choices(values)
    .argParser((value) => {
      if (values.includes(value)) return value;
      throw new NotUnderstood(
        message('command.unknown-value', {
          option: name(flags.replace(/ <.*/, '')),
          value: name(value),
          values: list(values.map(name), 'plain'),
        }),
      );
    })
    .default(preset);

/** Adds `--language` to a command. What it is already said in is what it stays in. */
export const withLanguage = (command: Command, words: Words): Command =>
  command.addOption(
    choiceOption(
      `-l, --language <${words.message(term('command.language-wanted'))}>`,
      words.message(term('command.language')),
      languages,
      words.locale,
    ),
  );

/** Adds `--units` to a command. */
export const withUnits = (command: Command, words: Words): Command =>
  command.addOption(
    choiceOption(
      `-u, --units <${words.message(term('command.units-wanted'))}>`,
      words.message(term('command.units')),
      ['plan', 'us', 'si'],
      'plan',
    ),
  );

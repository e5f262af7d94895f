import { list, type Message, message, name, term, type Words } from '@cribwright/messages';
import { closest } from '@cribwright/units';
import type { Command, CommanderError, HelpConfiguration, Option } from 'commander';

/** `-o, --output <path>`, with the word for what is wanted in the reader's language. */
export const flag = (names: string, wanted: string): string => `${names} <${wanted}>`;

/** How the help of every command is written, in a reader's language. */
export function helpIn(words: Words): HelpConfiguration {
  const titles: Readonly<Record<string, string>> = {
    'Usage:': words.message(term('command.usage')),
    'Arguments:': words.message(term('command.arguments')),
    'Options:': words.message(term('command.options')),
    'Commands:': words.message(term('command.commands')),
  };
  const usage = (command: Command): string =>
    [
      command.name(),
      `[${words.message(term('command.options-wanted'))}]`,
      ...(command.commands.length > 0 ? [`[${words.message(term('command.command-wanted'))}]`] : []),
      ...command.registeredArguments.map((a) => {
        const text = `${a.name()}${a.variadic ? '...' : ''}`;
        return a.required ? `<${text}>` : `[${text}]`;
      }),
    ].join(' ');
  return {
    styleTitle: (title) => titles[title] ?? title,
    commandUsage: (command) => (command.parent === null ? '' : `${command.parent.name()} `) + usage(command),
    subcommandTerm: (command) =>
      command.name() === 'help' ? `help [${words.message(term('command.command-wanted'))}]` : usage(command),
    optionDescription: (option) => optionText(option, words),
  };
}

function optionText({ description, argChoices, defaultValue }: Option, words: Words): string {
  const more = [
    ...(argChoices === undefined
      ? []
      : [message('command.choices', { choices: list(argChoices.map(name), 'plain') })]),
    ...(defaultValue === undefined
      ? []
      : [message('command.default', { value: name(String(defaultValue)) })]),
  ];
  return more.length === 0 ? description : `${description} (${words.message(list(more, 'groups'))})`;
}

/** What was wrong with a command line, as `commander` found it, and what was probably meant. */
export function usageFault(error: CommanderError, program: Command): readonly Message[] {
  const word = /'([^']*)'/.exec(error.message)?.[1] ?? '';
  const meant = (near: string | undefined): readonly Message[] =>
    near === undefined ? [] : [message('cli.did-you-mean', { near: name(near) })];
  switch (error.code) {
    case 'commander.unknownCommand':
      return [
        message('command.unknown-command', { word: name(word) }),
        ...meant(
          closest(
            word,
            program.commands.map((c) => c.name()),
          ),
        ),
      ];
    case 'commander.unknownOption': {
      const known = program.commands.flatMap((c) => c.options.flatMap((o) => o.long ?? []));
      return [
        message('command.unknown-option', { word: name(word) }),
        ...meant(closest(word, [...new Set(known)])),
      ];
    }
    case 'commander.missingArgument':
      return [message('command.missing-argument', { word: name(word) })];
    case 'commander.optionMissingArgument':
      return [message('command.missing-value', { word: name(word) })];
    case 'commander.excessArguments':
      return [term('command.too-many')];
    default:
      return [message('command.not-understood', { text: name(error.message) })];
  }
}

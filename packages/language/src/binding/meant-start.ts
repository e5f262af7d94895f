import { type Message, name } from '@cribwright/messages';
import type { Span, SyntaxStatement } from '@cribwright/syntax/internal';
import { closest } from '@cribwright/units';
import type { BlockSchema, PropertySchema } from '../bound/block-schema.js';
import { renamedAt } from '../phrase/renamed-words.js';
import { type LanguageProblem, problem, replace } from '../problems/problem.js';
import { problemMessage } from '../problems/problem-message.js';
import type { AllowedLines } from '../schema/schema.js';
import { wordsAt } from './statement-key.js';

/** How a line or block starts that is written in other words, and what is most likely meant. */
export interface MeantStart {
  /** Terms that the words take. */
  readonly length: number;
  readonly block: BlockSchema | undefined;
  readonly property: PropertySchema | undefined;
  /** A `use` line is meant. */
  readonly use: boolean;
  readonly problem: LanguageProblem;
}

type Terms = SyntaxStatement['terms'];

interface Place {
  readonly words: Message;
  /** The top of a file, where files are used. */
  readonly top: boolean;
}

/** A line that starts with another word of the trade, of another language, or as it did before the language changed. */
export function renamedStart(terms: Terms, sayable: AllowedLines, place: Place): MeantStart | undefined {
  const keys = keysOf(sayable, place.top);
  const found = renamedAt(terms, 0, 'line', (now) => keys.some((k) => `${now} `.startsWith(`${k} `)));
  return found && meant(terms, { ...found, near: found.now }, sayable, place);
}

/** A line that starts with a word that may stand there, misspelled. */
export function nearStart(terms: Terms, sayable: AllowedLines, place: Place): MeantStart | undefined {
  const keys = keysOf(sayable, place.top);
  const typed = [2, 1, 3].flatMap((n) => {
    const words = wordsAt(terms, n);
    const near =
      words &&
      closest(
        words.text,
        keys.filter((k) => k.split(' ').length === n || n === 1),
      );
    return words && near !== undefined ? [{ ...words, near }] : [];
  })[0];
  return typed && meant(terms, typed, sayable, place);
}

const keysOf = (sayable: AllowedLines, top: boolean): readonly string[] => [
  ...(top ? ['use'] : []),
  ...sayable.properties.keys(),
  ...sayable.blocks.keys(),
];

function meant(
  terms: Terms,
  { text, span, near }: { readonly text: string; readonly span: Span; readonly near: string },
  sayable: AllowedLines,
  place: Place,
): MeantStart {
  const property = [...sayable.properties].find(([key]) => `${near} `.startsWith(`${key} `))?.[1];
  return {
    length: terms.filter((t) => t.end <= span.end).length,
    block: sayable.blocks.get(near),
    property,
    use: near === 'use',
    problem: problem(
      'unknown-line--near',
      span,
      { what: name(text), where: place.words, near: name(near) },
      { fixes: [replace(problemMessage('unknown-line--fix', { near: name(near) }), span, near)] },
    ),
  };
}

import type { Figure } from '@cribwright/messages';
import { message, name, type Words, wordsIn } from '@cribwright/messages';
import type { System } from '@cribwright/units';
import type { Locale } from '../l10n/say.js';
import { say as translate } from '../l10n/say.js';

/**
 * Words from a plan as Markdown that shows them as they are: no links, no markup, no HTML. Escapes only what
 * could be taken for markup, for the sake of editors that show the text raw.
 */
export const plain = (text: string): string =>
  text
    .replace(/[\r\n]+/g, ' ')
    .replace(/[\\`*_[\]<>&~]/g, '\\$&')
    .replace(/^(\s*)([-+#])(?=\s|#)/, '$1\\$2')
    .replace(/^(\s*\d+)([.)])(?=\s)/, '$1\\$2');

/** A block of the plan language, colored by the editor. A fence inside cannot end it. */
export const fenced = (code: string): string => {
  const longest = Math.max(0, ...[...code.matchAll(/`+/g)].map(([ticks]) => ticks.length));
  const fence = '`'.repeat(Math.max(3, longest + 1));
  return `${fence}cribwright\n${code}\n${fence}`;
};

/** A figure with its sum written out, what governs it, and where it comes from. */
export function figureMarkdown(figure: Figure, locale: Locale, units: System): string {
  const words = wordsIn(locale, units);
  const lines = [`**${plain(words.label(figure))}: ${plain(words.value(figure))}**`];
  const calculation = words.calculation(figure);
  if (calculation !== undefined) {
    const { names, numbers } = calculation;
    lines.push(`= ${plain(names)}`);
    // A value that was read off is its own number: the first line says it already.
    if (numbers !== names && numbers !== words.value(figure)) lines.push(`= ${plain(numbers)}`);
  }
  if (figure.governs !== undefined)
    lines.push(plain(translate(message('editor.governs', { governs: figure.governs }), locale, units)));
  lines.push(
    `_${plain(translate(message('editor.source', { source: name(sourcesOf(figure, words).join('; ')) }), locale))}_`,
  );
  return lines.join('  \n');
}

/** Where a figure comes from; of one that is worked out, where what goes into it comes from. */
export function sourcesOf(figure: Figure, words: Words): readonly string[] {
  const found = new Set<string>();
  const visit = ({ source, inputs }: Figure, depth: number): void => {
    if (source.kind !== 'computed') found.add(words.source(source));
    else if (depth < deepestSource) for (const input of inputs) visit(input, depth + 1);
  };
  visit(figure, 0);
  return found.size === 0 ? [words.source(figure.source)] : [...found].slice(0, mostSources);
}

const deepestSource = 6;
const mostSources = 5;

import { type Figure, print, sourceInWords } from '@cribwright/engine';
import type { Locale } from '../../l10n/say.js';
import { say as translate } from '../../l10n/say.js';
import { say } from '../words.js';

/** Words from a plan as Markdown that shows them as they are: no links, no markup, no HTML. */
export const plain = (text: string): string =>
  text.replace(/[\\`*_{}[\]()<>#+\-.!|~&]/g, '\\$&').replace(/[\r\n]+/g, ' ');

/** A block of the plan language, coloured by the editor. A fence inside cannot end it. */
export const fenced = (code: string): string => {
  const longest = Math.max(0, ...[...code.matchAll(/`+/g)].map(([ticks]) => ticks.length));
  const fence = '`'.repeat(Math.max(3, longest + 1));
  return `${fence}cribwright\n${code}\n${fence}`;
};

/** A figure with its sum written out, what governs it, and where it comes from. */
export function figureMarkdown(figure: Figure, locale: Locale): string {
  const lines = [`**${plain(figure.label)}: ${plain(print(figure))}**`];
  if (figure.formula) {
    lines.push(`= ${plain(figure.formula.names)}`);
    if (figure.formula.numbers !== figure.formula.names) lines.push(`= ${plain(figure.formula.numbers)}`);
  }
  if (figure.governs !== undefined)
    lines.push(plain(translate(say('governs', { governs: figure.governs }), locale)));
  lines.push(`_${plain(translate(say('source', { source: sourceInWords(figure.source) }), locale))}_`);
  return lines.join('  \n');
}

import { type Locale, say as translate } from '../l10n/say.js';
import { codeOf, words } from '../problems/words.js';
import { plain } from './hover/markdown.js';
import { say } from './words.js';

const hole = /\{[^{}]+\}/g;

/** The page of a message about the writing of a plan: what it says, and what it offers. `undefined` for no such code. */
export function textPage(code: string, locale: Locale): string | undefined {
  const keys = Object.keys(words).filter((key) => codeOf(key as keyof typeof words) === code);
  if (keys.length === 0) return undefined;
  const sentences = (fixes: boolean): readonly string[] =>
    keys.filter((key) => /fix$/i.test(key) === fixes).map((key) => `- ${plain(sentence(key, locale))}`);
  const section = (title: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : [`## ${title}`, lines.join('\n')];
  return [
    `# ${code}`,
    translate(say('aboutWriting', {}), locale),
    ...section(translate(say('whatItSays', {}), locale), sentences(false)),
    ...section(translate(say('whatItOffers', {}), locale), sentences(true)),
  ]
    .join('\n\n')
    .concat('\n');
}

/** The words of a message with its holes left open. */
const sentence = (key: string, locale: Locale): string => {
  const text = words[key as keyof typeof words];
  const open = Object.fromEntries([...text.matchAll(hole)].map(([h]) => [h.slice(1, -1), '…']));
  const filled = text.replace(hole, '…');
  return translate({ kind: 'message', id: `language.${key}`, english: filled, holes: open }, locale);
};

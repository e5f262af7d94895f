import { type Figure, fill, type Message, print } from '@cribwright/engine';
import { recast } from './recast.js';
import { spanish } from './spanish.js';

/** Languages that messages are said in. English is the first; the others are tables beside it. */
export type Locale = 'en' | 'es';

/** A label, a sum or a short phrase of the engine in a reader's language. */
export const inWords = (text: string, locale: Locale): string => (locale === 'es' ? recast(text) : text);

/** A figure in a reader's language: `height 38.5 in`. */
export const figureWords = (figure: Figure, locale: Locale): string =>
  `${inWords(figure.label, locale)} ${inWords(print(figure), locale)}`;

/** A message in a reader's language. English where it has not been put into that language yet. */
export function say(message: Message, locale: Locale): string {
  const words = locale === 'es' ? spanish[message.id] : undefined;
  if (words === undefined) return message.text;
  const holes = Object.fromEntries(Object.entries(message.holes).map(([name, text]) => [name, recast(text)]));
  return fill(words, holes);
}

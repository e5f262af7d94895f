import { fill, type Message } from '@cribwright/engine';
import { recast } from './recast.js';
import { spanish } from './spanish.js';

/** Languages that messages are said in. English is the first; the others are tables beside it. */
export type Locale = 'en' | 'es';

/** A message in a reader's language. English where it has not been put into that language yet. */
export function say(message: Message, locale: Locale): string {
  const words = locale === 'es' ? spanish[message.id] : undefined;
  if (words === undefined) return message.text;
  const holes = Object.fromEntries(Object.entries(message.holes).map(([name, text]) => [name, recast(text)]));
  return fill(words, holes);
}

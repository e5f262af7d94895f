import { fill, type Message } from '@cribwright/engine';
import { spanish } from './spanish.js';

/** Languages that messages are said in. English is the first; the others are tables beside it. */
export type Locale = 'en' | 'es';

/** A message in a reader's language. English where it has not been put into that language yet. */
export function say(message: Message, locale: Locale): string {
  const words = locale === 'es' ? spanish[message.id] : undefined;
  return words === undefined ? message.text : fill(words, message.holes);
}

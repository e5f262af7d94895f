import type { Figure, Message } from '@cribwright/messages';
import { type Locale, wordsIn } from '@cribwright/messages';
import type { System } from '@cribwright/units';

export type { Locale } from '@cribwright/messages';

/** A figure in a reader's language: `height 38.5 in`. */
export const figureWords = (figure: Figure, locale: Locale, units: System): string =>
  wordsIn(locale, units).figure(figure);

/** A message in a reader's language. */
export const say = (message: Message, locale: Locale, units: System = 'us'): string =>
  wordsIn(locale, units).message(message);

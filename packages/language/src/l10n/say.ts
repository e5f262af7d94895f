import type { Figure, Message } from '@cribwright/engine';
import { type Locale, useUntranslated, wordsIn } from '@cribwright/messages';
import type { System } from '@cribwright/units';
import { recast } from './recast.js';
import { spanish } from './spanish.js';

export type { Locale } from '@cribwright/messages';

// Transition: Spanish of what has no catalog entry yet.
useUntranslated('es', { template: (id) => spanish[id], text: recast });

/** A figure in a reader's language: `height 38.5 in`. */
export const figureWords = (figure: Figure, locale: Locale, units: System): string =>
  wordsIn(locale, units).figure(figure);

/** A message in a reader's language. */
export const say = (message: Message, locale: Locale, units: System = 'us'): string =>
  wordsIn(locale, units).message(message);

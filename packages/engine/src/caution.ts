import { term, wordsIn } from '@cribwright/messages';

/** Transition: the limits of the tool in English. Surfaces with a language render `caution.text` themselves. */
export const caution: string = wordsIn('en', 'us').message(term('caution.text'));

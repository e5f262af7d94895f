import { term, type Words } from '@cribwright/messages';

/** The limits of the tool, for under each result: one wording in each language, so that no result goes without. */
export interface Caution {
  /** `Limits of this tool` */
  readonly heading: string;
  readonly text: string;
}

/** The limits of the tool in the language of `words`. */
export const cautionIn = (words: Words): Caution => ({
  heading: words.message(term('caution.heading')),
  text: words.message(term('caution.text')),
});

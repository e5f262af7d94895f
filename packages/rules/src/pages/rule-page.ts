import type { Locale } from '@cribwright/messages';
import { rulePages } from '../generated/texts/rule-pages.js';

/** The page of a rule in a reader's language, as Markdown. `undefined` where no rule has this id. */
export function rulePage(id: string, locale: Locale): string | undefined {
  const pages = rulePages();
  return Object.hasOwn(pages, id) ? pages[id]?.[locale] : undefined;
}

import { rulePage } from '@cribwright/rules';
import type { Locale } from '../l10n/say.js';
import { textPage } from './text-page.js';

/** The page of a rule, or of a message about the syntax, in a reader's language. `undefined` where there is neither. */
export const rulePageText = (code: string, locale: Locale): string | undefined =>
  rulePage(code, locale) ?? textPage(code, locale);

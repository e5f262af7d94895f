import { rulePages } from '@cribwright/rules';
import type { Locale } from '../l10n/say.js';
import { textPage } from './text-page.js';

/** The page of a rule, or of a message about the writing. `undefined` where there is neither. */
export const rulePageText = (code: string, locale: Locale): string | undefined =>
  Object.hasOwn(rulePages(), code) ? rulePages()[code] : textPage(code, locale);

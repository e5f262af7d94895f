import { rulePages } from '../generated/rule-pages.js';
import type { Locale } from '../l10n/say.js';
import { type RulePageParams, type RulePageReply, RulePageRequest } from '../protocol/requests.js';
import type { Feature } from './feature.js';
import { textPage } from './text-page.js';

/** `cribwright/rulePage`: what a rule protects against, its sum, its sources and its examples, as Markdown. */
export const rulePage: Feature = {
  serve(session) {
    session.connection.onRequest(
      RulePageRequest,
      ({ rule }: RulePageParams): RulePageReply => ({ markdown: rulePageText(rule, session.locale) }),
    );
  },
};

/** The page of a rule, or of a message about the writing. `undefined` where there is neither. */
export const rulePageText = (code: string, locale: Locale): string | undefined =>
  Object.hasOwn(rulePages, code) ? rulePages[code] : textPage(code, locale);

import type { Feature } from '../context/feature.js';
import { type RulePageParams, type RulePageReply, RulePageRequest } from '../protocol/requests.js';
import { rulePageText } from './rule-page-text.js';

/** `cribwright/rulePage`: what a rule protects against, its calculation, its sources and its examples, as Markdown. */
export const rulePage: Feature = {
  serve(session) {
    session.connection.onRequest(
      RulePageRequest,
      ({ rule }: RulePageParams): RulePageReply => ({ markdown: rulePageText(rule, session.locale) }),
    );
  },
};

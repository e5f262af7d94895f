import { rulePages } from '../generated/rule-pages.js';
import { type RulePageParams, type RulePageReply, RulePageRequest } from '../protocol/requests.js';
import type { Feature } from './feature.js';

/** `cribwright/rulePage`: what a rule protects against, its sum, its sources and its examples, as Markdown. */
export const rulePage: Feature = {
  serve({ connection }) {
    connection.onRequest(
      RulePageRequest,
      ({ rule }: RulePageParams): RulePageReply => ({ markdown: rulePageText(rule) }),
    );
  },
};

export const rulePageText = (rule: string): string | undefined =>
  Object.hasOwn(rulePages, rule) ? rulePages[rule] : undefined;

import type { Rule } from '@cribwright/engine';
import { ruleTextsEs } from './rule-texts-es.js';
import type { Locale } from './say.js';

/** What a rule is called and protects against, in a reader's language. */
export const ruleText = (rule: Rule, locale: Locale): Pick<Rule, 'title' | 'protects'> =>
  (locale === 'es' ? ruleTextsEs[rule.id] : undefined) ?? rule;

import type { Rule } from '@cribwright/engine';
import { type Locale, wordsIn } from '@cribwright/messages';
import { ruleTextsEs } from './rule-texts-es.js';

/** What a rule is called and protects against, in a reader's language. */
export function ruleText(rule: Rule, locale: Locale): { readonly title: string; readonly protects: string } {
  const words = wordsIn(locale, 'us');
  return (
    // Transition: Spanish of rules whose title is not in the catalogs yet.
    (locale === 'es' ? ruleTextsEs[rule.id] : undefined) ?? {
      title: words.message(rule.title),
      protects: words.message(rule.protects),
    }
  );
}

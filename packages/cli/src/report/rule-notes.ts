import type { Words } from '@cribwright/messages';
import { rules } from '@cribwright/rules';
import type { RuleNote } from './sarif.js';

/** Every rule's name and what it protects against, in a reader's language. */
export const ruleNotes = (words: Words): readonly RuleNote[] =>
  rules.map(({ id, title, protects }) => ({
    id,
    title: words.message(title),
    protects: words.message(protects),
  }));

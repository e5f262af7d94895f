import { rules } from '@cribwright/engine';
import { wordsIn } from '@cribwright/messages';
import type { RuleNote } from './sarif.js';

const words = wordsIn('en', 'us');

/** Every rule's name and what it protects against. */
export const ruleNotes = (): readonly RuleNote[] =>
  rules.map(({ id, title, protects }) => ({
    id,
    title: words.message(title),
    protects: words.message(protects),
  }));

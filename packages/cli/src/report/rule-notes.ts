import { rules } from '@cribwright/engine';
import type { RuleNote } from './sarif.js';

/** Every rule's name and what it protects against. */
export const ruleNotes = (): readonly RuleNote[] =>
  rules.map(({ id, title, protects }) => ({ id, title, protects }));

import { type Message, name } from '@cribwright/messages';
import type { Span } from '@cribwright/syntax/internal';
import { type LanguageProblem, problem } from '../problems/problem.js';

/** Something that could not be read: what it is in words, or as the plan writes it (`crib A`). */
export const notInPlan = (span: Span, what: Message | string): LanguageProblem =>
  problem('not-in-plan', span, { what: typeof what === 'string' ? name(what) : what });

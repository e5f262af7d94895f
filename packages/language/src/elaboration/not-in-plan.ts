import type { Span } from '../grammar/syntax.js';
import { sentence } from '../phrase/dimension-words.js';
import { type LanguageProblem, problem } from '../problems/problem.js';

/** Something that could not be read. `what` it is begins the sentence: `crib A`. */
export const notInPlan = (span: Span, what: string): LanguageProblem =>
  problem('not-in-plan', span, { what: sentence(what) });

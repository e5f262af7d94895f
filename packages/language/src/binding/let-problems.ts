import type { Expression } from '../phrase/expression.js';
import { vectorOfExpression } from '../phrase/measure.js';
import type { NameScope } from '../phrase/scope.js';
import type { LanguageProblem } from '../problems/problem.js';
import type { DraftLine } from './draft.js';

/** A `let` may measure anything, but its pieces must fit each other. */
export function expressionProblems(
  line: DraftLine,
  scope: NameScope,
  text: string,
): readonly LanguageProblem[] {
  const problems: LanguageProblem[] = [];
  const value = line.match?.values.value as Expression | undefined;
  if (value) vectorOfExpression(value, scope, (e) => text.slice(e.span.start, e.span.end), problems);
  return problems;
}

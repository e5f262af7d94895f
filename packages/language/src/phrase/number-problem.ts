import { name } from '@cribwright/messages';
import type { Span } from '@cribwright/syntax/internal';
import { type NumberFault, type OrderFault, quote } from '@cribwright/units';
import { type LanguageProblem, problem, type TextFix } from '../problems/problem.js';

/**
 * What is wrong with a number: as `units` reads it; `21-1/2`, where the dash would be a minus; a space between
 * thousands; a gap in a fraction.
 */
export type WrittenNumberFault = NumberFault | 'dash' | 'space' | 'gap';

/** What to say of a number that is malformed. `near` is what was likely meant. */
export function numberProblem(
  fault: WrittenNumberFault,
  span: Span,
  written: string,
  near: string | undefined,
  fixes: readonly TextFix[],
): LanguageProblem {
  const text = name(quote(written));
  const meant = { text, near: name(near ?? '') };
  switch (fault) {
    case 'not a number':
      return problem('number-malformed--not-a-number', span, { text }, { fixes });
    case 'comma':
      return problem('number-malformed--comma', span, { text }, { fixes });
    case 'decimal comma':
      return problem('number-malformed--decimal-comma', span, meant, { fixes });
    case 'decimal and fraction':
      return problem('number-malformed--decimal-fraction', span, { text }, { fixes });
    case 'zero':
      return problem('number-malformed--zero', span, { text }, { fixes });
    case 'two fractions':
      return problem('number-malformed--two-fractions', span, { text }, { fixes });
    case 'too large':
      return problem('number-malformed--too-large', span, { text }, { fixes });
    case 'space':
      return problem('number-malformed--space', span, meant, { fixes });
    case 'gap':
      return problem('number-malformed--gap', span, meant, { fixes });
    case 'dash':
      return problem('number-malformed--dash', span, meant, { fixes });
  }
}

/** What to say of units that do not follow one another: `4 in 3 ft`. */
export function orderProblem({ fault, before, unit, most }: OrderFault, span: Span): LanguageProblem {
  const units = { before: name(before), unit: name(unit) };
  switch (fault) {
    case 'order':
      return problem('unit-order', span, units);
    case 'whole':
      return problem('unit-order--whole', span, units);
    case 'below zero':
      return problem('unit-order--below-zero', span, units);
    case 'too many':
      return problem('unit-order--too-many', span, { ...units, most: name(String(most)) });
  }
}

import type { Span } from '@cribwright/syntax/internal';
import type { Unit } from '@cribwright/units';
import type { Reference } from '../bound/bound-file.js';

/** A quantity as it is written. Nothing is evaluated yet; every piece knows where it stands. */
export type Expression =
  | {
      readonly kind: 'number';
      /** `undefined` where the number is malformed: never taken for zero. A problem says why. */
      readonly value: number | undefined;
      /** `undefined` for a bare number. */
      readonly unit: WrittenUnit | undefined;
      readonly span: Span;
    }
  /** `3 ft 4 in` */
  | { readonly kind: 'compound'; readonly pieces: readonly NumberExpression[]; readonly span: Span }
  /** `36,000 to 42,000 lb` */
  | { readonly kind: 'range'; readonly low: Expression; readonly high: Expression; readonly span: Span }
  /** `39,000 lb ± 8 %` */
  | { readonly kind: 'tolerance'; readonly middle: Expression; readonly by: Expression; readonly span: Span }
  | {
      readonly kind: 'binary';
      readonly operator: '+' | '-' | '*' | '/';
      readonly operatorSpan: Span;
      readonly left: Expression;
      readonly right: Expression;
      readonly span: Span;
    }
  | { readonly kind: 'negative'; readonly of: Expression; readonly span: Span }
  | { readonly kind: 'group'; readonly of: Expression; readonly span: Span }
  /** A `let` name, or a parameter of a pattern. */
  | { readonly kind: 'named'; readonly reference: Reference; readonly span: Span }
  /** `trailer rail height`, `A height` */
  | {
      readonly kind: 'figure';
      readonly subject: Reference;
      readonly part: Reference | undefined;
      readonly figure: FigureWord;
      readonly figureSpan: Span;
      readonly span: Span;
    };

export type NumberExpression = Extract<Expression, { kind: 'number' }>;

export interface WrittenUnit {
  readonly unit: Unit;
  readonly text: string;
  readonly span: Span;
}

/** What an element can be asked for inside a calculation. */
export const figureWords = ['height', 'width', 'length', 'depth', 'from', 'to', 'weight'] as const;
export type FigureWord = (typeof figureWords)[number];

import type { Span } from '@cribwright/syntax/internal';
import type { Argument } from '../phrase/pattern.js';

/** The arguments and the name of one use of a pattern. Of the plan itself: none. */
export interface Expansion {
  /** `East.` */
  readonly prefix: string;
  readonly given: ReadonlyMap<string, Argument>;
  /** Where the pattern is used: a problem in it is told there too. */
  readonly outer: Expansion | undefined;
  readonly span: Span | undefined;
}

export const outermost: Expansion = { prefix: '', given: new Map(), outer: undefined, span: undefined };

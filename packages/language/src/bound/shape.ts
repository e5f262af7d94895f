import type { Dimension } from '@cribwright/units';
import type { Kind } from '../kind/kind.js';
import type { NameLabel, TextLabel } from './label-words.js';

export interface QuantityRule {
  /** More than one where either is right: `45 deg` or `12 %`. */
  readonly dimensions: readonly Dimension[];
  /** `36,000 to 42,000 lb` and `± 8 %` may stand here. */
  readonly range: boolean;
  /** A bare number will not do where a share is due: 1.5 alone would mean 150 %. */
  readonly percent?: boolean;
  /** Ends of what may be written, SI or plain. */
  readonly atLeast?: number;
  readonly atMost?: number;
}

/** The shape of a phrase. Built by the combinators of `pattern.ts`; read by the matcher, completion, and the docs. */
export type Shape =
  | { readonly kind: 'word'; readonly words: readonly string[]; readonly flag?: string }
  | { readonly kind: 'symbol'; readonly symbol: string }
  | { readonly kind: 'sequence'; readonly items: readonly Pattern[] }
  | { readonly kind: 'optional'; readonly item: Pattern }
  | { readonly kind: 'either'; readonly items: readonly Pattern[] }
  /** Each at most once, in any order. */
  | { readonly kind: 'any order'; readonly items: readonly Pattern[] }
  | { readonly kind: 'list'; readonly slot: string; readonly item: Pattern }
  /** What the item yields, under one slot of its own. */
  | { readonly kind: 'group'; readonly slot: string; readonly item: Pattern }
  | { readonly kind: 'quantity'; readonly slot: string; readonly rule: QuantityRule }
  | { readonly kind: 'choice'; readonly slot: string; readonly words: readonly string[] }
  | { readonly kind: 'reference'; readonly slot: string; readonly kinds: readonly Kind[] }
  /** A part of a vehicle. Of the one named just before it in the same phrase, or of the main vehicle. */
  | { readonly kind: 'part'; readonly slot: string; readonly of: string | undefined }
  /** A new name. */
  | { readonly kind: 'name'; readonly slot: string; readonly label: NameLabel }
  | { readonly kind: 'text'; readonly slot: string; readonly label: TextLabel }
  | { readonly kind: 'date'; readonly slot: string }
  | { readonly kind: 'size'; readonly slot: string }
  /** The id of a rule. */
  | { readonly kind: 'rule'; readonly slot: string }
  /** A calculation of any dimension. */
  | { readonly kind: 'expression'; readonly slot: string }
  /** `PairUnder(rail = trailer rail, reach = 24 in)` after the name. */
  | { readonly kind: 'arguments'; readonly slot: string };

/** A phrase that yields `T`. The type parameter is for the compiler alone. */
export type Pattern<T = unknown> = Shape & { readonly yields?: (() => T) | undefined };

export type Of<P> = P extends Pattern<infer T> ? T : never;

/** What the phrase of a line yields. */
export type Yields<P> = P extends { readonly phrase: Pattern<infer T> } ? T : never;

import type { Dimension } from '@cribwright/units';
import type { Kind, Reference } from '../binding/declaration.js';
import type { Span } from '../grammar/syntax.js';
import type { LanguageProblem } from '../problems/problem.js';
import type { PropertySchema } from '../schema/block-schema.js';

/** What a phrase yielded: its slots by name. Read it through `read(property, match)`, which knows the types. */
export interface Match {
  readonly values: Readonly<Record<string, unknown>>;
  readonly pieces: readonly Piece[];
  readonly references: readonly Reference[];
  readonly problems: readonly LanguageProblem[];
}

/** One understood stretch of a line, for coloring, hover and completion. */
export interface Piece {
  readonly span: Span;
  readonly kind:
    | 'key'
    | 'word'
    | 'choice'
    | 'number'
    | 'unit'
    | 'reference'
    | 'name'
    | 'text'
    | 'rule'
    | 'operator';
  readonly slot: string | undefined;
  readonly reference?: Reference;
  readonly dimension?: Dimension;
}

/** What may stand at a place in the text. */
export type Expected =
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'symbol'; readonly symbol: string }
  | {
      readonly kind: 'quantity';
      readonly slot: string;
      readonly dimensions: readonly Dimension[];
      readonly range: boolean;
    }
  | { readonly kind: 'unit'; readonly dimensions: readonly Dimension[] }
  | { readonly kind: 'reference'; readonly kinds: readonly Kind[] }
  /** Parts of this vehicle, or of the main one. */
  | { readonly kind: 'part'; readonly vehicle: Reference | undefined }
  | { readonly kind: 'name'; readonly label: string }
  | { readonly kind: 'text'; readonly label: string }
  | { readonly kind: 'date' }
  | { readonly kind: 'size' }
  | { readonly kind: 'rule' }
  | { readonly kind: 'figure' }
  | { readonly kind: 'end' };

/** The slots of a line, typed by its schema. The schema object must be the one the line was matched with. */
export const read = <T>(_schema: PropertySchema<T>, match: Match): T => match.values as T;

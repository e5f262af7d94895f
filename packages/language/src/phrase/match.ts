import type { Dimension } from '@cribwright/units';
import type { PropertySchema } from '../bound/block-schema.js';
import type { Match, Reference } from '../bound/bound-file.js';
import type { NameLabel, TextLabel } from '../bound/label-words.js';
import type { Kind } from '../kind/kind.js';

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
  | { readonly kind: 'name'; readonly label: NameLabel }
  | { readonly kind: 'text'; readonly label: TextLabel }
  | { readonly kind: 'date' }
  | { readonly kind: 'size' }
  | { readonly kind: 'rule' }
  | { readonly kind: 'figure' }
  | { readonly kind: 'end' };

/** The slots of a line, typed by its schema. The schema object must be the one the line was matched with. */
export const read = <T>(_schema: PropertySchema<T>, match: Match): T => match.values as T;

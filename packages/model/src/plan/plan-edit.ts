import type { Ref } from './ref.js';

/** A change to the plan's text, said without knowing the text. `text` is in the plan language. */
export type PlanEdit =
  | { readonly kind: 'set'; readonly at: Ref; readonly text: string }
  | { readonly kind: 'insert'; readonly into: Ref; readonly text: string }
  | { readonly kind: 'remove'; readonly at: Ref };

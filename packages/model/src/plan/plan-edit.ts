import type { Ref } from './ref.js';

/** A change to the plan's text, said without knowing the text. `text` is in the plan language. */
export type PlanEdit =
  | { readonly kind: 'set'; readonly at: Ref; readonly text: string }
  | { readonly kind: 'insert'; readonly into: Ref; readonly text: string }
  /** The line of a place, `at`, from where it now comes to: measured from the same as before. `text` where it cannot be. */
  | {
      readonly kind: 'place';
      readonly at: Ref;
      readonly from: { readonly x: number; readonly y: number };
      readonly to: { readonly x: number; readonly y: number };
      readonly text: string;
    }
  | { readonly kind: 'remove'; readonly at: Ref }
  /** One more name at the end of the list that a step works on: `build A` becomes `build A, B`. */
  | { readonly kind: 'append'; readonly at: Ref; readonly text: string }
  /** New steps beside another, in order; `texts` without their numbers. Those after them are numbered anew. */
  | {
      readonly kind: 'insert steps';
      readonly at: Ref;
      readonly where: 'before' | 'behind';
      readonly texts: readonly string[];
    }
  /** A step to another place in the order. The steps between are numbered anew. */
  | {
      readonly kind: 'move step';
      readonly at: Ref;
      readonly where: 'before' | 'behind';
      readonly step: Ref;
    };

import type { Plan } from './plan.js';
import type { Support, SupportKind, SupportOf } from './support.js';

/** Where a plan lists its supports, by their kind. In this order they are shown. */
const lists: { readonly [K in SupportKind]: (plan: Plan) => readonly SupportOf<K>[] } = {
  crib: (plan) => plan.cribs,
  'step chock': (plan) => plan.stepChocks,
  strut: (plan) => plan.struts,
  tie: (plan) => plan.ties,
  chock: (plan) => plan.chocks,
  pad: (plan) => plan.pads,
};

/** Everything that a crew puts in, kind by kind. */
export const supportsOf = (plan: Plan): readonly Support[] =>
  Object.values(lists).flatMap((list: (plan: Plan) => readonly Support[]) => list(plan));

/** What to make of a support of each kind. A new kind does not compile until every table knows it. */
export type PerSupportKind<T> = { readonly [K in SupportKind]: (support: SupportOf<K>) => T };

/** What the table makes of a support. */
export function byKind<T>(support: Support, table: PerSupportKind<T>): T {
  // The entry of a support's own kind takes that support; the compiler does not tie the two together.
  const make = table[support.kind] as (support: Support) => T;
  return make(support);
}

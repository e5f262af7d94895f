import type { Plan } from './plan.js';
import type { Support, SupportKind } from './support.js';

/** Where a plan lists its supports, by their kind. In this order they are shown. */
const lists: { readonly [K in SupportKind]: (plan: Plan) => readonly Extract<Support, { kind: K }>[] } = {
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

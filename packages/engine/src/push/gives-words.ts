import type { Ref } from '../model/ref.js';
import { nameOf, type SupportWorkings } from '../workings/support-workings.js';
import type { Gives } from './what-gives.js';

/** What gives first, for a reader: `strut S1 reaches what it holds`, `trailer tips over`. */
export function givesWords(
  gives: Gives | undefined,
  w: SupportWorkings,
): { readonly ref: Ref; readonly how: string } | undefined {
  if (gives === undefined) return undefined;
  const [element = gives.of] = gives.of.split('#');
  const ref = { element };
  const named = (list: readonly { readonly id: string; readonly name: string }[]) =>
    list.find((e) => e.id === element)?.name ?? element;
  switch (gives.kind) {
    case 'strut':
      return { ref, how: `strut ${named(w.plan.struts)} reaches its rated load` };
    case 'tie':
      return { ref, how: `tie ${named(w.plan.ties)} reaches its rating` };
    case 'contact':
      return {
        ref,
        how: `crib ${named(w.plan.cribs)} contact ${gives.of.split('#')[1] ?? ''} reaches what it holds`,
      };
    case 'lean':
      return { ref, how: `crib ${named(w.plan.cribs)} leans over` };
    case 'foot':
      return { ref: { element, property: 'base' }, how: `the base of strut ${named(w.plan.struts)} slides` };
    case 'tips':
      return { ref, how: `the ${nameOf(w, element)} tips over` };
    case 'slides':
      return { ref, how: `the ${nameOf(w, element)} slides` };
  }
}

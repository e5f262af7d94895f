import type { Fix, Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import {
  captureStep,
  nameOf,
  orderGraph,
  putIn,
  stepAfter,
  stepBefore,
  stepsHolding,
} from '@cribwright/engine/internal';
import { count, message, name, term } from '@cribwright/messages';
import type { ElementId, Step } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

/** Vehicles that rest on others: pairs of lower and upper, coupled ones left out. */
function lowerFirst(w: Workings): readonly RuleFinding[] {
  const { plan } = w;
  const graph = orderGraph(plan);
  const pairs = plan.contacts.filter((c) => !c.coupled);
  return pairs.flatMap(({ lower, upper }) => {
    const low = stepsHolding(plan, lower);
    const early = stepsHolding(plan, upper).find(
      (s) => !low.some((l) => l.id === s.id || graph.before(l.id, s.id)),
    );
    return early === undefined ? [] : [tooEarly(early, low[0], lower, upper, w)];
  });
}

function tooEarly(
  early: Step,
  first: Step | undefined,
  lower: ElementId,
  upper: ElementId,
  w: Workings,
): RuleFinding {
  const fixes: Fix[] =
    first === undefined
      ? neverHeld(lower, early, w)
      : orderGraph(w.plan).before(early.id, first.id)
        ? [stepAfter(early, first)]
        : [
            {
              title: message('order-ground-up.fix-after', {
                step: count(early.number),
                first: count(first.number),
              }),
              edits: [
                {
                  kind: 'set',
                  at: { element: early.id, property: 'after' },
                  text: `${first.number}`,
                },
              ],
              safe: false,
            },
          ];
  const names = { lower: name(nameOf(w, lower)), upper: name(nameOf(w, upper)) };
  return {
    subject: { element: upper },
    at: early.ref,
    message: message('order-ground-up.lower-first', {
      ...names,
      step: count(early.number),
      advice:
        first === undefined
          ? message('order-ground-up.lower-never', { lower: names.lower })
          : message('order-ground-up.move-after', { first: count(first.number) }),
    }),
    related:
      first === undefined
        ? []
        : [
            {
              at: first.ref,
              message: message('order-ground-up.held-here', { lower: names.lower }),
            },
          ],
    fixes,
  };
}

const neverHeld = (lower: ElementId, early: Step, { plan }: Workings): Fix[] => {
  const vehicle = plan.vehicles.find((v) => v.id === lower);
  return vehicle === undefined ? [] : [...captureStep(vehicle, early, plan)];
};

/** A pad comes before what stands on it. */
function padsFirst(w: Workings): readonly RuleFinding[] {
  const { plan } = w;
  const graph = orderGraph(plan);
  return plan.pads.flatMap((pad) => {
    const laid = plan.steps.find((s) => putIn(s).includes(pad.id));
    const built = plan.steps.find((s) => putIn(s).includes(pad.under));
    if (laid === undefined || built === undefined) return [];
    if (laid.id === built.id || graph.before(laid.id, built.id)) return [];
    return [
      {
        subject: { element: pad.under },
        at: built.ref,
        message: message('order-ground-up.base-first', {
          step: count(built.number),
          support: elementMessage(plan, pad.under),
          pad: name(pad.name),
        }),
        fixes: [stepBefore(laid, built)],
      },
    ];
  });
}

export const rule: Rule = {
  id: 'order-ground-up',
  title: term('order-ground-up.title'),
  family: 'order and crew',
  severity: 'danger',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('order-ground-up.protects'),
  sources: [practice],
  compares: [],
  check: (w) => [...lowerFirst(w), ...padsFirst(w)],
};

import type { Fix } from '../../finding/finding.js';
import { messages } from '../../finding/message.js';
import type { Step } from '../../model/plan.js';
import type { ElementId } from '../../model/ref.js';
import { orderGraph, putIn, stepsHolding } from '../../order/order-graph.js';
import { nameOf } from '../../workings/support-workings.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'lower-first':
    'Step {step} holds the {upper} before the {lower} beneath it is held. Build from the ground up: {advice}',
  'lower-never': 'no step holds the {lower}. Hold it in a step before this one.',
  'move-after': 'do step {first} before it.',
  'base-first':
    'Step {step} builds {support} before the pad {pad} that it stands on is there. Lay the pad first.',
  'held-here': 'Here the {lower} is held.',
  'fix-after': 'Let step {step} wait for step {first}',
} as const;
const say = messages('order-ground-up', words);

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
    first === undefined || orderGraph(w.plan).before(early.id, first.id)
      ? []
      : [
          {
            title: say('fix-after', {
              step: `${early.number}`,
              first: `${first.number}`,
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
  const names = { lower: nameOf(w, lower), upper: nameOf(w, upper) };
  return {
    subject: { element: upper },
    at: early.ref,
    message: say('lower-first', {
      ...names,
      step: `${early.number}`,
      advice:
        first === undefined
          ? say('lower-never', { lower: names.lower })
          : say('move-after', { first: `${first.number}` }),
    }),
    related:
      first === undefined
        ? []
        : [
            {
              at: first.ref,
              message: say('held-here', { lower: names.lower }),
            },
          ],
    fixes,
  };
}

/** A pad comes before what stands on it. */
function padsFirst(w: Workings): readonly RuleFinding[] {
  const { plan } = w;
  const graph = orderGraph(plan);
  return plan.pads.flatMap((pad) => {
    const laid = plan.steps.find((s) => putIn(s).includes(pad.id));
    const built = plan.steps.find((s) => putIn(s).includes(pad.under));
    if (laid === undefined || built === undefined) return [];
    if (laid.id === built.id || graph.before(laid.id, built.id)) return [];
    const support = [...plan.cribs, ...plan.struts, ...plan.stepChocks].find((s) => s.id === pad.under);
    return [
      {
        subject: { element: pad.under },
        at: built.ref,
        message: say('base-first', {
          step: `${built.number}`,
          support: support?.name ?? pad.under,
          pad: pad.name,
        }),
      },
    ];
  });
}

export const rule: Rule = {
  id: 'order-ground-up',
  title: 'Upper vehicle held before the one beneath it',
  family: 'order and crew',
  severity: 'danger',
  protects: 'What is built on something loose moves with it: the lower vehicle comes first.',
  sources: [practice],
  compares: [],
  words,
  check: (w) => [...lowerFirst(w), ...padsFirst(w)],
};

import { messages } from '../../finding/message.js';
import type { Plan, Step } from '../../model/plan.js';
import type { ElementId } from '../../model/ref.js';
import { holders, type OrderGraph, orderGraph, putIn, stepsPutting } from '../../order/order-graph.js';
import { elementWords } from '../../workings/element-words.js';
import type { Workings } from '../../workings/workings.js';
import { practice, type Rule, type RuleFinding } from '../rule.js';

const words = {
  'no-steps': 'The plan says what stands and not in which order it is built. Write the steps.',
  'no-step': '{support} is in the plan and no step puts it in.',
  'never-locked': '{support} is set and no step locks it. Lock it before anyone works in the load’s path.',
  'chocks-first': 'Step {step} works at {vehicle} before its wheels are chocked (step {first}). Chock first.',
  'ends-first':
    'Step {step} tightens {tie} before {support} stands. A strap or chain is tightened when both of its ends are there.',
  'lock-late': 'Step {step} checks or relies on {support} before it is locked (step {first}). Lock first.',
  circle: 'Steps {steps} wait for each other, so none of them can start. Take one `after` out.',
  'remove-early': 'Step {step} takes out {support}, which no step before it put in.',
} as const;
const say = messages('order-missing', words);

type Find = (w: Workings, graph: OrderGraph) => readonly RuleFinding[];

/** Said in words of its own where a step already does it in a list. */
const doing = (plan: Plan, action: Step['action'], target: ElementId) =>
  plan.steps.find((s) => s.action === action && s.targets.includes(target));

const unbuilt: Find = ({ plan }) => {
  const supports = [...plan.cribs, ...plan.stepChocks, ...plan.struts, ...plan.ties];
  if (supports.length === 0) return [];
  if (plan.steps.length === 0)
    return [{ subject: plan.ref, at: plan.ref, severity: 'note', message: say('no-steps', {}) }];
  return supports
    .filter((s) => stepsPutting(plan, s.id).length === 0)
    .map((s) => ({
      subject: { element: s.id },
      at: { element: s.id },
      message: say('no-step', { support: elementWords(plan, s.id) }),
    }));
};

const circles: Find = ({ plan }, graph) => {
  const steps = plan.steps.filter((s) => graph.circular.includes(s.id));
  const first = steps[0];
  return first === undefined
    ? []
    : [
        {
          subject: first.ref,
          at: first.ref,
          severity: 'danger',
          message: say('circle', { steps: steps.map((s) => s.number).join(', ') }),
        },
      ];
};

/** Chocks before anything else is put in at a vehicle. */
const chocksFirst: Find = ({ plan }, graph) =>
  plan.vehicles.flatMap((vehicle) => {
    const own = plan.chocks.filter((c) => c.vehicle === vehicle.id).map((c) => c.id);
    const chocking = plan.steps.filter(
      (s) =>
        (s.action === 'chock' && s.targets.includes(vehicle.id)) || putIn(s).some((id) => own.includes(id)),
    );
    const held = holders(plan, vehicle.id);
    const first = chocking[0];
    if (first === undefined) return [];
    const early = plan.steps.find(
      (s) =>
        putIn(s).some((id) => held.includes(id)) &&
        !chocking.some((c) => c.id === s.id || graph.before(c.id, s.id)),
    );
    return early === undefined
      ? []
      : [
          {
            subject: { element: vehicle.id },
            at: early.ref,
            message: say('chocks-first', {
              step: `${early.number}`,
              vehicle: elementWords(plan, vehicle.id),
              first: `${first.number}`,
            }),
          },
        ];
  });

const bothEnds: Find = ({ plan }, graph) =>
  plan.ties.flatMap((tie) => {
    const tight = doing(plan, 'tension', tie.id);
    if (tight === undefined) return [];
    const struts = [tie.from, tie.to].flatMap((end) =>
      end.kind === 'strut base' || end.kind === 'strut head' ? [end.strut] : [],
    );
    return struts.flatMap((id) => {
      const set = stepsPutting(plan, id)[0];
      if (set === undefined || set.id === tight.id || graph.before(set.id, tight.id)) return [];
      return [
        {
          subject: { element: tie.id },
          at: tight.ref,
          message: say('ends-first', {
            step: `${tight.number}`,
            tie: elementWords(plan, tie.id),
            support: elementWords(plan, id),
          }),
        },
      ];
    });
  });

/** A rated strut is locked by a step, and before the step that checks it. A pinned one may be pinned as it is set. */
const locks: Find = ({ plan }, graph) => {
  const anyLocks = plan.steps.some((s) => s.action === 'lock');
  return plan.struts.flatMap((strut) => {
    if (strut.gear.kind === 'timber post' || stepsPutting(plan, strut.id).length === 0) return [];
    const lock = doing(plan, 'lock', strut.id);
    const support = elementWords(plan, strut.id);
    const subject = { element: strut.id };
    if (lock === undefined)
      return anyLocks ? [{ subject, at: subject, message: say('never-locked', { support }) }] : [];
    const check = doing(plan, 'check', strut.id) ?? doing(plan, 'check', strut.head.vehicle);
    return check === undefined || !graph.before(check.id, lock.id)
      ? []
      : [
          {
            subject,
            at: check.ref,
            message: say('lock-late', { step: `${check.number}`, support, first: `${lock.number}` }),
          },
        ];
  });
};

const removals: Find = ({ plan }, graph) =>
  plan.steps
    .filter((s) => s.action === 'remove')
    .flatMap((step) =>
      step.targets
        .filter((id) => !stepsPutting(plan, id).some((s) => graph.before(s.id, step.id)))
        .map((id) => ({
          subject: { element: id },
          at: step.ref,
          message: say('remove-early', { step: `${step.number}`, support: elementWords(plan, id) }),
        })),
    );

export const rule: Rule = {
  id: 'order-missing',
  title: 'Steps that leave something out or come in the wrong order',
  family: 'order and crew',
  severity: 'warning',
  protects: 'What no step puts in is not there when it is needed; what comes too early stands on nothing.',
  sources: [practice],
  compares: [],
  words,
  check: (w) => {
    const graph = orderGraph(w.plan);
    return [unbuilt, circles, chocksFirst, bothEnds, locks, removals].flatMap((find) => find(w, graph));
  },
};

import type { Workings } from '@cribwright/engine';
import { elementMessage } from '@cribwright/engine';
import {
  holders,
  lockStep,
  type OrderGraph,
  orderGraph,
  putIn,
  stepAfter,
  stepBefore,
  stepFor,
  stepsPutting,
} from '@cribwright/engine/internal';
import { count, list, message, term } from '@cribwright/messages';
import type { ElementId, Plan, Step } from '@cribwright/model';
import { practice, type Rule, type RuleFinding } from '../definition/rule.js';

type Find = (w: Workings, graph: OrderGraph) => readonly RuleFinding[];

/** Said in words of its own where a step already does it in a list. */
const doing = (plan: Plan, action: Step['action'], target: ElementId) =>
  plan.steps.find((s) => s.action === action && s.targets.includes(target));

const unbuilt: Find = ({ plan }) => {
  const supports = [...plan.cribs, ...plan.stepChocks, ...plan.struts, ...plan.ties];
  if (supports.length === 0) return [];
  if (plan.steps.length === 0)
    return [{ subject: plan.ref, at: plan.ref, severity: 'note', message: term('order-missing.no-steps') }];
  return supports
    .filter((s) => stepsPutting(plan, s.id).length === 0)
    .map((s) => ({
      subject: { element: s.id },
      at: { element: s.id },
      message: message('order-missing.no-step', { support: elementMessage(plan, s.id) }),
      fixes: stepFor(s, plan),
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
          message: message('order-missing.circle', { steps: list(steps.map((s) => count(s.number))) }),
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
            message: message('order-missing.chocks-first', {
              step: count(early.number),
              vehicle: elementMessage(plan, vehicle.id),
              first: count(first.number),
            }),
            fixes: [stepBefore(first, early)],
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
          message: message('order-missing.ends-first', {
            step: count(tight.number),
            tie: elementMessage(plan, tie.id),
            support: elementMessage(plan, id),
          }),
          fixes: [stepAfter(tight, set)],
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
    const support = elementMessage(plan, strut.id);
    const subject = { element: strut.id };
    if (lock === undefined)
      return anyLocks
        ? [
            {
              subject,
              at: subject,
              message: message('order-missing.never-locked', { support }),
              fixes: lockStep(strut, plan),
            },
          ]
        : [];
    const check = doing(plan, 'check', strut.id) ?? doing(plan, 'check', strut.head.vehicle);
    return check === undefined || !graph.before(check.id, lock.id)
      ? []
      : [
          {
            subject,
            at: check.ref,
            message: message('order-missing.lock-late', {
              step: count(check.number),
              support,
              first: count(lock.number),
            }),
            fixes: [stepBefore(lock, check)],
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
          message: message('order-missing.remove-early', {
            step: count(step.number),
            support: elementMessage(plan, id),
          }),
        })),
    );

export const rule: Rule = {
  id: 'order-missing',
  title: term('order-missing.title'),
  family: 'order and crew',
  severity: 'warning',
  judges: 'plan',
  readsAlso: ['steps'],
  protects: term('order-missing.protects'),
  sources: [practice],
  compares: [],
  check: (w) => {
    const graph = orderGraph(w.plan);
    return [unbuilt, circles, chocksFirst, bothEnds, locks, removals].flatMap((find) => find(w, graph));
  },
};

import { count, list, message, name } from '@cribwright/messages';
import type { Plan, Step, Support, Vehicle } from '@cribwright/model';
import { elementMessage } from '../element/element-message.js';
import type { Fix } from '../finding/finding.js';
import { holders } from '../order/order-graph.js';
import { workInSteps } from './step-edits.js';

/** Moves a step to right after another. */
export const stepAfter = (step: Step, other: Step): Fix => ({
  title: message('remedy.step-after', { step: count(step.number), other: count(other.number) }),
  edits: [{ kind: 'move step', at: step.ref, where: 'behind', step: other.ref }],
  safe: false,
});

/** Moves a step to right before another. */
export const stepBefore = (step: Step, other: Step): Fix => ({
  title: message('remedy.step-before', { step: count(step.number), other: count(other.number) }),
  edits: [{ kind: 'move step', at: step.ref, where: 'before', step: other.ref }],
  safe: false,
});

const puts = { crib: 'build', 'step chock': 'set', strut: 'set', tie: 'tension' } as const;

/** Puts a support into the steps that no step puts in. */
export function stepFor(support: Extract<Support, { kind: keyof typeof puts }>, plan: Plan): readonly Fix[] {
  const behind =
    support.kind === 'tie'
      ? [support.from, support.to].flatMap((end) => ('strut' in end ? [end.strut] : []))
      : [];
  const edits = workInSteps(plan, [{ action: puts[support.kind], name: support.name }], behind);
  if (edits.length === 0) return [];
  return [
    { title: message('remedy.step-for', { support: elementMessage(plan, support.id) }), edits, safe: false },
  ];
}

/** Locks a strut once it is set. */
export function lockStep(strut: Extract<Support, { kind: 'strut' }>, plan: Plan): readonly Fix[] {
  const edits = workInSteps(plan, [{ action: 'lock', name: strut.name }], [strut.id]);
  if (edits.length === 0) return [];
  return [
    { title: message('remedy.step-lock', { support: elementMessage(plan, strut.id) }), edits, safe: false },
  ];
}

/** A step that captures a vehicle with the cribs and step chocks that hold it, before another step. */
export function captureStep(vehicle: Vehicle, before: Step, plan: Plan): readonly Fix[] {
  const held = new Set(holders(plan, vehicle.id));
  const cribs = plan.cribs.filter((c) => held.has(c.id));
  const by = cribs.length > 0 ? cribs : plan.stepChocks.filter((c) => held.has(c.id));
  if (by.length === 0) return [];
  const kind = cribs.length > 0 ? 'cribs' : 'step chocks';
  const supports = list(
    by.map((s) => elementMessage(plan, s.id)),
    'and',
  );
  return [
    {
      title: message('remedy.step-capture', { vehicle: name(vehicle.name), supports }),
      edits: [
        {
          kind: 'insert steps',
          at: before.ref,
          where: 'before',
          texts: [`capture  ${vehicle.name}  with ${kind} ${by.map((s) => s.name).join(', ')}`],
        },
      ],
      safe: false,
    },
  ];
}

import type { ElementId, Plan, PlanEdit, Step, StepAction } from '@cribwright/model';
import { orderGraph, putIn } from '../order/order-graph.js';

/** What a step is to do: `tension T2`. */
export interface Work {
  readonly action: StepAction;
  /** The name of the support, as the plan writes it. */
  readonly name: string;
}

/**
 * Edits that put work into the steps of a plan: into the step that does the like already, where that comes late
 * enough, else as new steps. None in a plan without steps.
 *
 * @param behind what must be in place before
 */
export function workInSteps(
  plan: Plan,
  works: readonly Work[],
  behind: readonly ElementId[] = [],
): readonly PlanEdit[] {
  const graph = orderGraph(plan);
  const needed = plan.steps.filter((s) => s.targets.some((t) => behind.includes(t)) && s.action !== 'check');
  const late = (step: Step): boolean => needed.every((n) => n.id === step.id || graph.before(n.id, step.id));
  const edits: PlanEdit[] = [];
  const added: string[] = [];
  let after: Step | undefined;
  for (const { action, name } of works) {
    const like = plan.steps.findLast((s) => s.action === action && late(s));
    if (like === undefined || added.length > 0) added.push(`${action}  ${name}`);
    else {
      edits.push({ kind: 'append', at: like.ref, text: name });
      after = like;
    }
  }
  const last =
    after ?? needed.at(-1) ?? plan.steps.findLast((s) => s.action !== 'check') ?? plan.steps.at(-1);
  if (added.length > 0 && last !== undefined)
    edits.push({ kind: 'insert steps', at: last.ref, where: 'behind', texts: added });
  return edits;
}

/** Chocks before the first step that puts anything in. None in a plan without steps. */
export function chockInSteps(plan: Plan, vehicle: string): readonly PlanEdit[] {
  const first = plan.steps.find(
    (s) => s.action !== 'size up' && (putIn(s).length > 0 || s.action === 'capture'),
  );
  const at = first ?? plan.steps.at(-1);
  if (at === undefined) return [];
  return [
    {
      kind: 'insert steps',
      at: at.ref,
      where: first === undefined ? 'behind' : 'before',
      texts: [`chock  ${vehicle} both directions`],
    },
  ];
}

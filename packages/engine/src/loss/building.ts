import { count, type Message, message, term } from '@cribwright/messages';
import type { ElementId, Plan, Step } from '@cribwright/model';
import { supportsOf } from '@cribwright/model';
import { stepWords } from '../order/step-words.js';

/** What stands after a step, before anything is worked out about it. */
export interface BuildingStage {
  readonly id: string;
  readonly title: Message;
  readonly step: ElementId | undefined;
  readonly standing: readonly ElementId[];
  readonly adding: readonly ElementId[];
  readonly removing: readonly ElementId[];
}

/**
 * As found, then one stage for each step that changes what stands. Supports that no step names come last of all:
 * nobody has said when they are built.
 */
export function buildingStages(plan: Plan): readonly BuildingStage[] {
  const supports = allSupports(plan);
  const stages: BuildingStage[] = [
    { id: 'as found', title: term('loss.as-found'), step: undefined, standing: [], adding: [], removing: [] },
  ];
  let standing: readonly ElementId[] = [];
  for (const step of inOrder(plan.steps)) {
    const named = [...step.targets, ...step.with];
    const removing = step.action === 'remove' ? named : [];
    const adding = changes(step)
      ? [...named, ...chocksOf(plan, step)].filter(
          (id, i, all) => supports.has(id) && !standing.includes(id) && all.indexOf(id) === i,
        )
      : [];
    if (adding.length === 0 && removing.length === 0) continue;
    standing = [...standing.filter((id) => !removing.includes(id)), ...adding];
    stages.push({ id: step.id, title: titleOf(plan, step), step: step.id, standing, adding, removing });
  }
  const named = new Set(plan.steps.flatMap((s) => [...s.targets, ...s.with]));
  const left = [...supports].filter((id) => !standing.includes(id) && !named.has(id));
  if (left.length > 0)
    stages.push({
      id: 'not in any step',
      title: plan.steps.length === 0 ? term('loss.all-in-place') : term('loss.in-no-step'),
      step: undefined,
      standing: [...standing, ...left],
      adding: left,
      removing: [],
    });
  return stages;
}

const changes = ({ action }: Step): boolean =>
  action !== 'remove' && action !== 'size up' && action !== 'check';

const allSupports = (plan: Plan): ReadonlySet<ElementId> => new Set(supportsOf(plan).map((s) => s.id));

/** `chock trailer` puts in all of its chocks. */
const chocksOf = (plan: Plan, step: Step): readonly ElementId[] =>
  step.action === 'chock' ? plan.chocks.filter((c) => step.targets.includes(c.vehicle)).map((c) => c.id) : [];

const titleOf = (plan: Plan, step: Step): Message =>
  message('step.numbered', { number: count(step.number), work: stepWords(step, plan) });

/** By what each needs first; otherwise as written. A ring of needs is left as written: the order rules say so. */
function inOrder(steps: readonly Step[]): readonly Step[] {
  const done: Step[] = [];
  const left = [...steps];
  while (left.length > 0) {
    const ready = left.findIndex((s) =>
      s.after.every((a) => done.some((d) => d.id === a) || !left.some((l) => l.id === a)),
    );
    const [next] = left.splice(Math.max(0, ready), 1);
    if (next !== undefined) done.push(next);
  }
  return done;
}

import type { ElementId, Plan, Step } from '@cribwright/model';

/** Who waits for whom. Steps run in the order of their lines; one with `after` waits only for those it names. */
export interface OrderGraph {
  readonly steps: readonly Step[];
  /** The steps that a step waits for directly. */
  readonly waitsFor: (step: ElementId) => readonly ElementId[];
  /** True where `first` is sure to be done before `second` starts. */
  readonly before: (first: ElementId, second: ElementId) => boolean;
  /** Steps that wait for themselves in the end. Empty in a plan that can be carried out. */
  readonly circular: readonly ElementId[];
  /** An order in which they can be carried out; those that are circular are left out. */
  readonly sequence: readonly Step[];
}

export function orderGraph({ steps }: Pick<Plan, 'steps'>): OrderGraph {
  const known = new Set(steps.map((s) => s.id));
  const direct = new Map<ElementId, readonly ElementId[]>(
    steps.map((s, i) => {
      const previous = steps[i - 1];
      const named = s.after.filter((a) => known.has(a));
      return [
        s.id,
        named.length > 0 ? named : previous === undefined || s.after.length > 0 ? [] : [previous.id],
      ];
    }),
  );
  const waitsFor = (id: ElementId) => direct.get(id) ?? [];
  const earlier = new Map<ElementId, ReadonlySet<ElementId>>();
  for (const s of steps) earlier.set(s.id, allBefore(s.id, waitsFor));
  const circular = steps.filter((s) => earlier.get(s.id)?.has(s.id) === true).map((s) => s.id);
  return {
    steps,
    waitsFor,
    before: (first, second) => earlier.get(second)?.has(first) === true,
    circular,
    sequence: [...steps]
      .filter((s) => !circular.includes(s.id))
      .map((s, i) => ({ s, i, depth: earlier.get(s.id)?.size ?? 0 }))
      .sort((a, b) => a.depth - b.depth || a.i - b.i)
      .map(({ s }) => s),
  };
}

function allBefore(id: ElementId, waitsFor: (id: ElementId) => readonly ElementId[]): ReadonlySet<ElementId> {
  const seen = new Set<ElementId>();
  const open = [...waitsFor(id)];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    open.push(...waitsFor(next));
  }
  return seen;
}

const places: ReadonlySet<Step['action']> = new Set(['build', 'slide', 'set', 'capture', 'chock', 'tension']);

/** The supports that a step puts in. */
export const putIn = (step: Step): readonly ElementId[] =>
  places.has(step.action) ? [...step.targets.filter((t) => !t.startsWith('vehicle/')), ...step.with] : [];

/** The steps that put a support in. */
export const stepsPutting = (plan: Pick<Plan, 'steps'>, support: ElementId): readonly Step[] =>
  plan.steps.filter((s) => putIn(s).includes(support));

/** The cribs, step chocks and struts that hold a vehicle. */
export function holders(plan: Plan, vehicle: ElementId): readonly ElementId[] {
  const captures = (s: { readonly captures: readonly { readonly vehicle: ElementId }[] }) =>
    s.captures.some((c) => c.vehicle === vehicle);
  return [
    ...plan.cribs.filter(captures).map((c) => c.id),
    ...plan.stepChocks.filter(captures).map((c) => c.id),
    ...plan.struts.filter((s) => s.head.vehicle === vehicle).map((s) => s.id),
  ];
}

/** The steps that stabilize a vehicle: those that say so, and those that put in what holds it. */
export function stepsHolding(plan: Plan, vehicle: ElementId): readonly Step[] {
  const held = holders(plan, vehicle);
  return plan.steps.filter(
    (s) =>
      (s.action === 'capture' && s.targets.includes(vehicle)) || putIn(s).some((id) => held.includes(id)),
  );
}

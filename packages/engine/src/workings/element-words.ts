import type { Plan } from '../model/plan.js';
import type { ElementId } from '../model/ref.js';

/** An element as people say it: `crib A`, `strut S1`, `the trailer`, `step 3`. */
export function elementWords(plan: Plan, id: ElementId): string {
  const step = plan.steps.find((s) => s.id === id);
  if (step !== undefined) return `step ${step.number}`;
  const vehicle = plan.vehicles.find((v) => v.id === id);
  if (vehicle !== undefined) return `the ${vehicle.name}`;
  const tie = plan.ties.find((t) => t.id === id);
  if (tie !== undefined) return `${tie.gear.kind} ${tie.name}`;
  const named = [...plan.cribs, ...plan.stepChocks, ...plan.struts, ...plan.chocks, ...plan.pads].find(
    (s) => s.id === id,
  );
  if (named !== undefined) return `${named.kind} ${named.name}`;
  const way = plan.egress.find((e) => e.id === id);
  return way === undefined ? id.replace('/', ' ') : `egress ${way.name}`;
}

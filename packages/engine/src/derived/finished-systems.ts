import type { Plan } from '@cribwright/model';
import { planPushSystem } from '../push/plan-push-system.js';
import type { Push, PushSystem } from '../push/push-system.js';
import type { RestingSystem } from '../resting/system.js';
import { withoutLoads } from '../side-push/push-rose.js';
import { workingsOf } from './workings.js';

/** The finished system of a plan as plain resting systems, at the heavy end: for measuring, and for other solvers. */
export function restingSystems(plan: Plan): readonly RestingSystem[] {
  return workingsOf(plan)
    .resting()
    .parts.map(({ component, stages, corners }) => ({
      bodies: component.bodies.flatMap((b, i) => {
        const c = b.corners[corners.at(-1)?.[i] ?? 0];
        return c === undefined ? [] : [{ id: b.id, weight: c.weight, x: c.x, y: c.y }];
      }),
      springs: component.points
        .filter((_, i) => stages.at(-1)?.asBuilt.there[i] === true)
        .map((p) => ({
          id: p.id,
          upper: p.upper,
          lower: p.lower,
          x: p.at.x,
          y: p.at.y,
          stiffness: p.stiffness,
        })),
    }));
}

/** The same, to be pushed at the center of the first body. */
export function pushSystems(plan: Plan): readonly { readonly system: PushSystem; readonly push: Push }[] {
  const w = workingsOf(plan);
  const resting = w.resting();
  return resting.parts.flatMap((part) => {
    const { component, stages } = part;
    const corner = withoutLoads(part).at(-1) ?? [];
    const there = component.points.filter((_, i) => stages.at(-1)?.asBuilt.there[i] === true);
    const standing = resting.stages.at(-1)?.standing ?? [];
    const system = planPushSystem(w, component, there, standing, corner, true);
    const [body] = system.bodies;
    return body === undefined
      ? []
      : [{ system, push: { body: body.id, at: body.center, direction: { x: 1, y: 0, z: 0 } } }];
  });
}

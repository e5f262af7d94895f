import { gravityOn } from '../mass/gravity.js';
import type { Body, Load } from '../statics/index.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { cribStack, originalContact, stepChockContact } from './contacts.js';
import { settleLimit } from './settings.js';
import type { Group, SceneChoice, StandingScene } from './standing-scene.js';
import { footOf, strutParts, tiesOf } from './struts-and-ties.js';

/**
 * The part of a plan that hangs together, as a scene in space: vehicles and cabs, cribs as stacks, feet of struts as
 * points. Every support of the plan has its rows, also where it does not stand yet.
 */
export function sceneOf(w: SupportWorkings, group: Group, choice: SceneChoice): StandingScene {
  const stacks = w.cribs().flatMap((c) => cribStack(c, group, w) ?? []);
  const struts = w.struts().flatMap((s) => strutParts(s, group, w) ?? []);
  const original = group.points.filter((p) => p.original);
  const stepChocks = group.points.filter((p) => p.kind === 'step chock');
  const ties = tiesOf(group, new Set(struts.map((s) => s.foot.id)), w);
  const parts = new Map<string, readonly string[]>([
    ...stacks.map(
      (s) => [s.body.id, [s.body.id, ...s.base.map((b) => b.id), ...s.top.map((t) => t.id)]] as const,
    ),
    ...stepChocks.map((p) => [p.element, [p.id]] as const),
    ...struts.map((s) => [s.strut.id, [s.strut.id, footOf(s.strut.id), s.ground.id]] as const),
    ...ties.map((t) => [t.id, [t.id]] as const),
  ]);
  return {
    parts,
    scene: {
      // Stacks first: each touches few others, which spares the solver most of its work.
      bodies: [...stacks.map((s) => s.body), ...vehicleBodies(w, group, choice)],
      feet: struts.map((s) => s.foot),
      contacts: [
        ...original.map((p) => originalContact(p, w, choice)),
        ...stacks.flatMap((s) => [...s.base, ...s.top]),
        ...stepChocks.map((p) => stepChockContact(p, w)),
        ...struts.map((s) => s.ground),
      ],
      struts: struts.map((s) => s.strut),
      ties,
      loads: choice.tools ? toolLoads(w, group) : [],
      gravity: gravityOn(w.plan.ground),
      movementLimit: settleLimit,
    },
  };
}

/** Where the height of a center of gravity is not known it is taken at the top, where least tips it. */
function vehicleBodies(w: SupportWorkings, { bodies }: Group, { corner }: SceneChoice): readonly Body[] {
  return bodies.flatMap((b, i) => {
    const c = b.corners[corner[i] ?? 0];
    const height = b.centerHeight?.high ?? w.vehicles.get(b.vehicle)?.height ?? 0;
    return c === undefined
      ? []
      : [{ id: b.id, weight: c.weight, center: { x: (c.center ?? c).x, y: (c.center ?? c).y, z: height } }];
  });
}

/** Tools in whatever direction, at the high end of their ranges. */
const toolLoads = (w: SupportWorkings, { bodies }: Group): readonly Load[] =>
  w.plan.toolLoads
    .filter((l) => bodies.some((b) => b.id === l.on))
    .map(({ on, at, direction, force }) => ({
      on: { kind: 'body', id: on },
      at,
      force: { x: direction.x * force.high, y: direction.y * force.high, z: direction.z * force.high },
    }));

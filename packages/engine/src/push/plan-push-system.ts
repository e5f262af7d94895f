import type { Anchor, Point3 } from '@cribwright/model';
import type { Component, JointCorner } from '../loss/components.js';
import { gravityOn } from '../mass/gravity.js';
import { leastFootFriction } from '../strut/foot-friction.js';
import { bodyOfPart, type SupportPoint } from '../supports/support-points.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { useLimit } from '../use/use-limit.js';
import { gripUnder, pushContact, stacksOf } from './push-contacts.js';
import type { PushStrut, PushSystem, PushTie, TieEnd } from './push-system.js';

/**
 * A plan's system, as it stands at a stage, ready to be pushed. Of a capacity or a rating the share counts that the
 * policy lets be used.
 *
 * @param working whether the declared tool loads are on.
 */
export function planPushSystem(
  w: SupportWorkings,
  component: Component,
  there: readonly SupportPoint[],
  standing: readonly string[],
  corner: JointCorner,
  working: boolean,
): PushSystem {
  const bodies = component.bodies.flatMap((b, i) => {
    const c = b.corners[corner[i] ?? 0];
    return c === undefined
      ? []
      : [
          {
            id: b.id,
            weight: c.weight,
            center: { x: (c.center ?? c).x, y: (c.center ?? c).y, z: b.centerHeight?.high ?? 0 },
          },
        ];
  });
  const known = new Set(bodies.map((b) => b.id));
  const part = useLimit(w);
  const struts = strutsOf(w, standing)
    .filter((s) => known.has(s.body))
    .map((s) => ({ ...s, capacity: s.capacity * part }));
  const footed = new Set(struts.map((s) => s.id));
  return {
    bodies,
    contacts: there
      .filter((p) => p.kind !== 'strut')
      .map((p) => pushContact(p, standing, w))
      .map((c) => (c.capacity === undefined ? c : { ...c, capacity: c.capacity * part })),
    stacks: stacksOf(there, w),
    struts,
    ties: tiesOf(w, standing)
      .filter((t) =>
        [t.from, t.to].every((e) =>
          e.kind === 'foot' ? footed.has(e.strut) : e.kind === 'ground' || known.has(e.body),
        ),
      )
      .map((t) => ({ ...t, rating: t.rating * part })),
    loads: working
      ? w.plan.toolLoads.flatMap((l) =>
          known.has(l.on)
            ? [
                {
                  body: l.on,
                  at: l.at,
                  force: {
                    x: l.direction.x * l.force.high,
                    y: l.direction.y * l.force.high,
                    z: l.direction.z * l.force.high,
                  },
                },
              ]
            : [],
        )
      : [],
    gravity: gravityOn(w.plan.ground),
  };
}

/** Struts that stand and are locked, at their capacity for their length. Unknown capacity holds nothing. */
function strutsOf(w: SupportWorkings, standing: readonly string[]): readonly PushStrut[] {
  return w.struts().flatMap(({ strut, capacity, placed: { head, foot } }): readonly PushStrut[] => {
    const vehicle = w.vehicles.get(strut.head.vehicle);
    const part = vehicle?.parts.find((p) => p.id === strut.head.part);
    const locked = strut.lock === 'pinned' || strut.lock === 'collar';
    if (vehicle === undefined) return [];
    if (!locked || !standing.includes(strut.id)) return [];
    const body = part === undefined ? vehicle.id : bodyOfPart(vehicle, part);
    return [
      {
        id: strut.id,
        body,
        head,
        foot,
        footFriction: Math.min(leastFootFriction(strut, w.plan), gripUnder(body, w)),
        capacity: capacity.value?.low ?? 0,
      },
    ];
  });
}

function tiesOf(w: SupportWorkings, standing: readonly string[]): readonly PushTie[] {
  return w.placed.ties.all.flatMap(({ tie, ...ends }): readonly PushTie[] => {
    const from = endOf(tie.from, ends.from, w);
    const to = endOf(tie.to, ends.to, w);
    if (!standing.includes(tie.id) || from === undefined || to === undefined) return [];
    const anchors = [tie.from, tie.to].map((a) => (a.kind === 'ground anchor' ? (a.holds ?? 0) : Infinity));
    return [{ id: tie.id, from, to, rating: Math.min(tie.gear.rating ?? 0, ...anchors) }];
  });
}

function endOf(anchor: Anchor, at: Point3 | undefined, w: SupportWorkings): TieEnd | undefined {
  if (at === undefined) return undefined;
  switch (anchor.kind) {
    case 'strut base':
      return { kind: 'foot', strut: anchor.strut };
    case 'ground anchor':
      return { kind: 'ground', at };
    case 'strut head': {
      const head = w.plan.struts.find((s) => s.id === anchor.strut)?.head;
      return head === undefined ? undefined : onBody(head.vehicle, head.part, at, w);
    }
    case 'vehicle part':
      return onBody(anchor.vehicle, anchor.part, at, w);
  }
}

function onBody(vehicle: string, part: string, at: Point3, w: SupportWorkings): TieEnd {
  const found = w.vehicles.get(vehicle);
  const piece = found?.parts.find((p) => p.id === part);
  return {
    kind: 'body',
    body: found !== undefined && piece !== undefined ? bodyOfPart(found, piece) : vehicle,
    at,
  };
}

import type { Anchor, Point3 } from '@cribwright/model';
import { gripUnder } from '../push/push-contacts.js';
import type { Contact, End, Foot, Strut, Tie } from '../statics/index.js';
import { leastFootFriction } from '../strut/foot-friction.js';
import type { StrutWorking } from '../strut/strut-working.js';
import { axialStiffness, bodyOfPart } from '../supports/support-points.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { useLimit } from '../use/use-limit.js';
import { holder } from './contacts.js';
import { bodyAt } from './groups.js';
import {
  footStiffness,
  footWeight,
  ratingForStiffness,
  shearShare,
  stretchAtRating,
  unknownCapacity,
} from './settings.js';
import type { Group } from './standing-scene.js';

export const footOf = (strut: string): string => `${strut}/foot`;

export interface StrutParts {
  readonly strut: Strut;
  readonly foot: Foot;
  readonly ground: Contact;
}

/** A strut with its foot. One that is not locked, or has no known place, holds nothing and is left out. */
export function strutParts(s: StrutWorking, group: Group, w: SupportWorkings): StrutParts | undefined {
  const { strut } = s;
  const vehicle = w.vehicles.get(strut.head.vehicle);
  const part = vehicle?.parts.find((p) => p.id === strut.head.part);
  const { head, foot: at } = s.placed;
  const locked = strut.lock === 'pinned' || strut.lock === 'collar';
  if (vehicle === undefined || !locked) return undefined;
  const body = part === undefined ? vehicle.id : bodyOfPart(vehicle, part);
  const length = Math.hypot(head.x - at.x, head.y - at.y, head.z - at.z);
  if (!(length > 0) || !group.bodies.some((b) => b.id === body)) return undefined;
  const foot = footOf(strut.id);
  return {
    foot: { id: foot, at, weight: footWeight },
    ground: {
      id: `${strut.id}/ground`,
      upper: { kind: 'foot', id: foot },
      lower: { kind: 'ground' },
      at,
      normal: { x: 0, y: 0, z: 1 },
      friction: Math.min(leastFootFriction(strut, w.plan), gripUnder(body, w)),
      stiffness: footStiffness,
      shearStiffness: footStiffness * shearShare,
    },
    strut: {
      id: strut.id,
      head: { on: holder(body), at: head },
      foot: { on: { kind: 'foot', id: foot }, at },
      stiffness: axialStiffness(strut, length),
      capacity: s.capacity.value === undefined ? unknownCapacity : s.capacity.value.low * useLimit(w),
      ...(strut.preload > 0 ? { preload: strut.preload } : {}),
    },
  };
}

/** Ties with both ends on something that is in the scene. */
export function tiesOf(group: Group, feet: ReadonlySet<string>, w: SupportWorkings): readonly Tie[] {
  const bodies = new Set(group.bodies.map((b) => b.id));
  return w.placed.ties.all.flatMap(({ tie, ...places }): readonly Tie[] => {
    const ends = [endOf(tie.from, places.from, w), endOf(tie.to, places.to, w)];
    const [from, to] = ends;
    if (from === undefined || to === undefined) return [];
    const isThere = ({ on }: End) =>
      on.kind === 'ground' || (on.kind === 'foot' ? feet.has(on.id) : bodies.has(on.id));
    if (!ends.every((e) => e !== undefined && isThere(e))) return [];
    if (ends.every((e) => e?.on.kind === 'ground')) return [];
    const length = Math.hypot(to.at.x - from.at.x, to.at.y - from.at.y, to.at.z - from.at.z);
    if (!(length > 0)) return [];
    const holds = [
      tie.gear.rating,
      ...[tie.from, tie.to].flatMap((a) => (a.kind === 'ground anchor' ? [a.holds] : [])),
    ];
    const known = holds.every((h) => h !== undefined && h > 0);
    return [
      {
        id: tie.id,
        from,
        to,
        stiffness: (tie.gear.rating || ratingForStiffness) / (stretchAtRating[tie.gear.kind] * length),
        capacity: known ? Math.min(...holds.map((h) => h ?? 0)) * useLimit(w) : unknownCapacity,
        ...(tie.pretension > 0 ? { pretension: tie.pretension } : {}),
      },
    ];
  });
}

function endOf(anchor: Anchor, at: Point3 | undefined, w: SupportWorkings): End | undefined {
  if (at === undefined) return undefined;
  switch (anchor.kind) {
    case 'strut base':
      return { on: { kind: 'foot', id: footOf(anchor.strut) }, at };
    case 'ground anchor':
      return { on: { kind: 'ground' }, at };
    case 'strut head':
    case 'vehicle part': {
      const body = bodyAt(anchor, w);
      return body === undefined ? undefined : { on: holder(body), at };
    }
  }
}

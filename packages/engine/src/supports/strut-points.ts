import { message, name } from '@cribwright/messages';
import type { ElementId, Strut, Tie } from '@cribwright/model';
import { leastFootFriction } from '../strut/foot-friction.js';
import { tiesAtFoot } from '../strut/pairs.js';
import type { StrutWorking } from '../strut/strut-working.js';
import { holdsFoot } from '../strut/tie-working.js';
import { axialStiffness, bodyOfPart, type SupportPoint } from './support-points.js';
import type { SupportWorkings } from './support-workings.js';

/**
 * Struts as one-way springs by their upward part. A strut whose base neither a tie nor friction holds at its
 * angle is left out: it would slide before it carried. So is one that is only held by its pump.
 */
export const strutPoints = (w: SupportWorkings): readonly SupportPoint[] =>
  w.struts().flatMap((s) => strutPoint(s, w) ?? []);

function strutPoint(s: StrutWorking, w: SupportWorkings): SupportPoint | undefined {
  const { strut } = s;
  const vehicle = w.vehicles.get(strut.head.vehicle);
  const part = vehicle?.parts.find((p) => p.id === strut.head.part);
  const angle = s.angle.value?.low;
  const length = s.length.value?.high;
  if (vehicle === undefined || angle === undefined || length === undefined || !(angle > 0) || !(length > 0))
    return undefined;
  if (strut.lock !== 'pinned' && strut.lock !== 'collar') return undefined;
  if (holders(strut, w).length === 0 && !frictionHolds(strut, angle, w)) return undefined;
  const upward = Math.sin(angle);
  return {
    id: strut.id,
    element: strut.id,
    label: message('element.strut-upward', { name: name(strut.name) }),
    kind: 'strut',
    original: false,
    group: strut.id,
    at: s.placed.head,
    upper: part === undefined ? vehicle.id : bodyOfPart(vehicle, part),
    lower: 'ground',
    stiffness: axialStiffness(strut, length) * upward ** 2,
    preload: strut.preload * upward,
    ref: strut.ref,
  };
}

/** Whether a strut carries once these stand: it must, and so must a tie at its base unless friction holds that. */
export function strutStands(
  point: SupportPoint,
  standing: readonly ElementId[],
  w: SupportWorkings,
): boolean {
  const working = w.struts().find((s) => s.strut.id === point.element);
  if (working === undefined || !standing.includes(point.element)) return false;
  return (
    frictionHolds(working.strut, working.angle.value?.low ?? 0, w) ||
    holders(working.strut, w).some((t) => standing.includes(t.id))
  );
}

/** The ties at its base that pull against the way in which it would slide. */
const holders = (strut: Strut, w: SupportWorkings): readonly Tie[] =>
  tiesAtFoot(strut.id, w.plan.ties).filter((t) => holdsFoot(t, strut, w.plan));

/** Thrust ≤ friction × downward force, S cos θ ≤ μ S sin θ. */
const frictionHolds = (strut: Strut, angle: number, w: SupportWorkings): boolean =>
  Math.cos(angle) <= leastFootFriction(strut, w.plan) * Math.sin(angle);

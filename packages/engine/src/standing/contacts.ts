import type { ElementId, Vehicle } from '@cribwright/model';
import { stepToPlan } from '@cribwright/model';
import { STANDARD_GRAVITY } from '@cribwright/units';
import type { CribWorking } from '../crib/crib-working.js';
import { gripUnder, pushContact } from '../push/push-contacts.js';
import type { Body, Contact, Holder, Rolling, Vector } from '../statics/index.js';
import type { SupportPoint } from '../supports/support-points.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { useLimit } from '../use/use-limit.js';
import { timberOnPart, underCrib } from './friction.js';
import { coupledFriction, shearShare, steeringShare, unknownCapacity } from './settings.js';
import type { Group, SceneChoice } from './standing-scene.js';

const up: Vector = { x: 0, y: 0, z: 1 };

export const holder = (id: ElementId | 'ground'): Holder =>
  id === 'ground' ? { kind: 'ground' } : { kind: 'body', id };

/** What held the vehicles before the crew came: wheels, landing gear, mounts, vehicles beneath, corners that lie. */
export function originalContact(p: SupportPoint, w: SupportWorkings, choice: SceneChoice): Contact {
  const { friction, coupled, rolls } = pushContact(p, choice.standing, w);
  const vehicle = w.vehicles.get(p.upper);
  const rolling =
    p.kind === 'tire' && rolls !== undefined && vehicle !== undefined
      ? rollingOf(p, vehicle, rolls, choice)
      : undefined;
  return {
    id: p.id,
    upper: holder(p.upper),
    lower: holder(p.lower),
    at: p.at,
    normal: p.kind === 'tire' && vehicle !== undefined ? slopeUnder(vehicle) : up,
    friction: coupled === true ? coupledFriction : friction,
    stiffness: p.stiffness,
    shearStiffness: p.stiffness * shearShare,
    ...(rolling === undefined ? {} : { rolling }),
  };
}

function rollingOf(
  p: SupportPoint,
  vehicle: Vehicle,
  rolls: { readonly along: Vector; readonly heldForward: boolean; readonly heldBack: boolean },
  { brakes }: SceneChoice,
): Rolling {
  const axle = vehicle.axles.find((a) => p.group === `${vehicle.id}/${a.id}`);
  const braked =
    brakes && vehicle.brakesSet === true && axle !== undefined && axle.x > vehicle.length * steeringShare;
  return {
    along: rolls.along,
    stopsForward: rolls.heldForward || braked,
    stopsBack: rolls.heldBack || braked,
  };
}

/**
 * The way the ground pushes up under the wheels of a vehicle. One that pitches with its wheels down stands on ground
 * that slopes as much.
 */
export function slopeUnder(vehicle: Vehicle): Vector {
  if (vehicle.position.kind !== 'pitched') return up;
  const { angle } = vehicle.position;
  const front = stepToPlan(vehicle, { x: -1, y: 0 });
  return { x: front.x * Math.sin(angle), y: front.y * Math.sin(angle), z: Math.cos(angle) };
}

export function stepChockContact(p: SupportPoint, w: SupportWorkings): Contact {
  const chock = w.plan.stepChocks.find((s) => s.id === p.element);
  return {
    id: p.id,
    upper: holder(p.upper),
    lower: holder(p.lower),
    at: p.at,
    normal: up,
    friction: Math.min(timberOnPart(w), underCrib(w, p.lower !== 'ground'), gripUnder(p.upper, w)),
    stiffness: p.stiffness,
    shearStiffness: p.stiffness * shearShare,
    capacity: chock?.capacity === undefined ? unknownCapacity : chock.capacity * useLimit(w),
  };
}

/** A crib as a stack: a body with contacts on top and at its base, so that it leans, slides and tips as one does. */
export interface CribStack {
  readonly body: Body;
  readonly base: readonly Contact[];
  readonly top: readonly Contact[];
}

export function cribStack(c: CribWorking, group: Group, w: SupportWorkings): CribStack | undefined {
  const { crib } = c;
  const points = group.points.filter((p) => p.element === crib.id);
  const [first] = points;
  const height = c.height.value?.high;
  if (first === undefined || height === undefined || !(height > 0)) return undefined;
  const floor = first.at.z - height;
  // Two halves in series give the stiffness of the line of crossings.
  const stiffness = 2 * first.stiffness;
  const capacity =
    c.contactCapacity.value === undefined ? unknownCapacity : c.contactCapacity.value.low * useLimit(w);
  const shared = { normal: up, stiffness, shearStiffness: stiffness * shearShare, capacity };
  const pieces = (crib.courses * (crib.layout.lengthwise + crib.layout.crosswise)) / 2;
  const { width, depth, length, density } = crib.timber;
  return {
    body: {
      id: crib.id,
      weight: pieces * width * depth * length * density * STANDARD_GRAVITY,
      center: { ...crib.at, z: floor + height / 2 },
    },
    base: c.contacts.map((contact) => ({
      ...shared,
      id: `${crib.id}#${contact.number}/base`,
      upper: holder(crib.id),
      lower: holder(first.lower),
      at: { x: contact.x, y: contact.y, z: floor },
      friction: underCrib(w, first.lower !== 'ground'),
    })),
    top: points.map((p) => ({
      ...shared,
      id: p.id,
      upper: holder(p.upper),
      lower: holder(crib.id),
      at: p.at,
      friction: Math.min(timberOnPart(w), gripUnder(p.upper, w)),
      ...(p.preload > 0 ? { preload: p.preload } : {}),
    })),
  };
}

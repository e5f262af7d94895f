import type { PushContact, Vector } from './push-system.js';

/**
 * Edges of a friction cone cut by `count` planes, each a force with normal part 1. The pyramid stands inside the
 * cone, so it never lends friction that is not there; one edge points straight against the push, where it is exact.
 *
 * A wheel that is free to roll resists only across its rolling direction.
 */
export function frictionRays(
  contact: Pick<PushContact, 'friction' | 'rolls'>,
  against: Vector,
  count = 8,
): readonly Vector[] {
  const start = Math.atan2(against.y, against.x);
  const rays = Array.from({ length: count }, (_, i) => {
    const angle = start + (2 * Math.PI * i) / count;
    const ray = { x: contact.friction * Math.cos(angle), y: contact.friction * Math.sin(angle), z: 1 };
    return contact.rolls === undefined ? ray : held(ray, contact.rolls);
  });
  if (contact.rolls === undefined && contact.friction > 0) return rays;
  const distinct = rays.filter(
    (r, i) => rays.findIndex((o) => Math.hypot(o.x - r.x, o.y - r.y) < 1e-12) === i,
  );
  return distinct.length > 0 ? distinct : [{ x: 0, y: 0, z: 1 }];
}

/** Takes out of a friction force what a rolling wheel cannot give. */
function held(ray: Vector, { along, heldForward, heldBack }: NonNullable<PushContact['rolls']>): Vector {
  const part = ray.x * along.x + ray.y * along.y;
  // A force back along the rolling direction needs something that keeps the wheel from rolling forward.
  const gives = part < 0 ? heldForward : heldBack;
  return gives ? ray : { x: ray.x - part * along.x, y: ray.y - part * along.y, z: 1 };
}

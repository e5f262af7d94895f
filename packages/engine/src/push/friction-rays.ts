import type { PushContact, Vector } from './push-system.js';

/** The level directions of a friction pyramid, evenly round, the first one straight against the push. */
export function raysAgainst(against: Vector, count = 8): readonly Vector[] {
  const start = Math.atan2(against.y, against.x);
  return Array.from({ length: count }, (_, i) => {
    const angle = start + (2 * Math.PI * i) / count;
    return { x: Math.cos(angle), y: Math.sin(angle), z: 0 };
  });
}

/**
 * Edges of a friction cone cut by planes, each a force with normal part 1. The pyramid stands inside the cone, so
 * it never lends friction that is not there; one edge points straight against the push, where it is exact.
 *
 * A wheel that is free to roll resists only across its rolling direction.
 */
export function frictionRays(
  { friction, rolls }: Pick<PushContact, 'friction' | 'rolls'>,
  directions: readonly Vector[],
): readonly Vector[] {
  if (!(friction > 0)) return [{ x: 0, y: 0, z: 1 }];
  const rays = directions.map((d) => ({ x: friction * d.x, y: friction * d.y, z: 1 }));
  if (rolls === undefined) return rays;
  const kept = rays.map((ray) => held(ray, rolls));
  return kept.filter((r, i) => kept.findIndex((o) => Math.hypot(o.x - r.x, o.y - r.y) < 1e-12) === i);
}

/** Takes out of a friction force what a rolling wheel cannot give. */
function held(ray: Vector, { along, heldForward, heldBack }: NonNullable<PushContact['rolls']>): Vector {
  const part = ray.x * along.x + ray.y * along.y;
  // A force back along the rolling direction needs something that keeps the wheel from rolling forward.
  const gives = part < 0 ? heldForward : heldBack;
  return gives ? ray : { x: ray.x - part * along.x, y: ray.y - part * along.y, z: 1 };
}

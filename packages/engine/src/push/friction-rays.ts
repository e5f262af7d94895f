import type { Vector } from '../space/vectors.js';
import type { PushContact } from './push-system.js';

/** The level directions of a friction pyramid, evenly round, the first one straight against the push. */
export function raysAgainst(against: Vector, count = 8): readonly Vector[] {
  const start = Math.atan2(against.y, against.x);
  return Array.from({ length: count }, (_, i) => {
    const angle = start + (2 * Math.PI * i) / count;
    return { x: Math.cos(angle), y: Math.sin(angle), z: 0 };
  });
}

const straightUp: readonly Vector[] = [{ x: 0, y: 0, z: 1 }];

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
  if (!(friction > 0)) return straightUp;
  const rays = directions.map((d) => ({ x: friction * d.x, y: friction * d.y, z: 1 }));
  if (rolls === undefined || (rolls.heldForward && rolls.heldBack)) return rays;
  const across = { x: -rolls.along.y, y: rolls.along.x, z: 0 };
  const free: Vector[] = [];
  const held: Vector[] = [];
  for (const ray of rays) {
    const part = ray.x * rolls.along.x + ray.y * rolls.along.y;
    // A force back along the rolling direction needs something that keeps the wheel from rolling forward.
    if (part < 0 ? rolls.heldForward : rolls.heldBack) held.push(ray);
    else free.push({ x: ray.x - part * rolls.along.x, y: ray.y - part * rolls.along.y, z: 1 });
  }
  // Those from which the rolling part was taken lie on one line: its two ends make all between them.
  free.sort((a, b) => dot(a, across) - dot(b, across));
  return [...held, ...free.slice(0, 1), ...free.slice(1).slice(-1)];
}

const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y;

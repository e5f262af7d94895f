import type { Vector } from '../space/vectors.js';
import { toward } from '../space/vectors.js';
import type { Push, PushSystem, PushTie, TieEnd } from './push-system.js';

/** Whether a force on the pushed body does not act the way it is pushed. */
export const resists = (on: Vector, push: Push): boolean =>
  on.x * push.direction.x + on.y * push.direction.y <= 1e-9;

export const isAtFoot = (t: PushTie, strut: string): boolean =>
  [t.from, t.to].some((e) => e.kind === 'foot' && e.strut === strut);

/** A tie from a body to the ground that would pull it the way it is pushed hangs slack. */
export function borrows(t: PushTie, a: Vector, b: Vector, push: Push): boolean {
  if (t.from.kind === 'body' && t.to.kind === 'ground') return !resists(toward(a, b), push);
  if (t.to.kind === 'body' && t.from.kind === 'ground') return !resists(toward(b, a), push);
  return false;
}

/** Where an end of a tie is. */
export function endAt(end: TieEnd, system: PushSystem): Vector | undefined {
  return end.kind === 'foot' ? system.struts.find((s) => s.id === end.strut)?.foot : end.at;
}

import { residual } from './assemble.js';
import { linksAt } from './link-law.js';
import { type Member, type Model, movedAt, vectorAt } from './model.js';
import { type Bordered, dampedStep, largest } from './newton.js';
import { dot, minus, size, times } from './vector.js';

export type Relaxed =
  | { readonly kind: 'still' }
  /** Farther than the movement limit. */
  | { readonly kind: 'moved'; readonly members: readonly Member[] }
  | { readonly kind: 'no convergence' };

/** Scaled; a step that is driven by less than this has come to rest. */
const rest = 1e-7;
const steps = 400;

/**
 * Lets the model come to rest by over-damped steps: c (q - q_k) is the part of the load that is not yet carried, and
 * c is as small as Newton allows. Friction is taken note of after each step.
 *
 * @param q changed: where things are.
 * @param origin where movement is counted from.
 * @param firstGuess where the first step looks first.
 * @param quick gives up where Newton stalls: there may be a shorter way.
 */
export function* relax(
  model: Model,
  q: Float64Array,
  origin: Float64Array,
  border?: Bordered,
  firstGuess?: Float64Array,
  quick = false,
): Generator<void, Relaxed> {
  const least = 1e-9 * model.stiffest;
  const from = Float64Array.from(q);
  const out = new Float64Array(model.unknowns);
  let c = least;
  let floor = least;
  let guess = firstGuess;
  for (let i = 0; i < steps; i++) {
    const push = border?.push ?? 0;
    q.set(guess ?? from);
    guess = undefined;
    const found = yield* dampedStep(model, q, from, c, border, quick);
    if (!found) {
      q.set(from);
      if (border !== undefined) border.push = push;
      if (quick) return { kind: 'no convergence' };
      c *= 30;
      if (c > 1e6 * model.stiffest) return { kind: 'no convergence' };
      continue;
    }
    // A step past the limit is taken in smaller ones, so that nothing is passed over on the way.
    if (border === undefined && movedBeyond(model, q, origin).length > 0) {
      const far = farthest(model, q, from).distance;
      if (far > model.movementLimit / 4) {
        residual(model, from, out);
        floor = Math.max(3 * c, (8 * largest(out)) / model.movementLimit);
        c = floor;
        q.set(from);
        continue;
      }
    }
    takeNote(model, q);
    const beyond = movedBeyond(model, q, origin);
    if (beyond.length > 0) return { kind: 'moved', members: beyond };
    let driven = 0;
    for (let j = 0; j < q.length; j++)
      driven = Math.max(driven, c * Math.abs((q[j] as number) - (from[j] as number)));
    if (driven <= rest) return { kind: 'still' };
    from.set(q);
    floor = Math.max(least, floor / 2);
    c = Math.max(floor, c / 10);
  }
  return { kind: 'no convergence' };
}

/** Takes note of slip and friction at q, from which friction goes on. */
export function takeNote(model: Model, q: Float64Array): void {
  for (const { link, move, across } of linksAt(model, q)) {
    link.held = across;
    link.slip = minus(move, times(link.axis, dot(move, link.axis)));
  }
}

/** The member of which some point has moved farthest between two places, and how far. */
export function farthest(
  model: Model,
  q: Float64Array,
  from: Float64Array,
): { readonly distance: number; readonly each: ReadonlyMap<number, number> } {
  const apart = q.map((v, i) => v - (from[i] as number));
  const each = new Map<number, number>();
  const count = (first: number, distance: number) =>
    each.set(first, Math.max(each.get(first) ?? 0, distance));
  for (const m of model.members) count(m.first, size(vectorAt(apart, m.first)));
  for (const link of model.links)
    for (const end of [link.a, link.b]) if (end.first >= 0) count(end.first, size(movedAt(apart, end)));
  return { distance: Math.max(0, ...each.values()), each };
}

export function movedBeyond(model: Model, q: Float64Array, origin: Float64Array): readonly Member[] {
  const { each } = farthest(model, q, origin);
  return model.members.filter((m) => (each.get(m.first) ?? 0) > model.movementLimit);
}

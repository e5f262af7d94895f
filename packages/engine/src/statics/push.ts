import { problemsOf } from './check-scene.js';
import { imbalanceOf } from './equilibrium.js';
import { type Forces, forcesAt, mostUsed, stateAt, type Use, unknownsOf } from './forces.js';
import { linksAt, relativeMove } from './link-law.js';
import { addForce, type Model, modelOf } from './model.js';
import { along, type Bordered } from './newton.js';
import type { NotSolved } from './outcome.js';
import { farthest, relax, takeNote } from './relax.js';
import type { Push, Scene } from './scene.js';
import { isOut, outOfBalance } from './settle.js';
import type { State } from './state.js';
import { dot, minus, times } from './vector.js';

/** How hard a push is held, and what ends it. */
export type PushResult = Held | NotSolved;

/** A push that was followed to its end. */
export interface Held {
  readonly kind: 'held';
  /** N: the greatest push that was held on the way, in balance and within ratings and the movement limit. */
  readonly push: number;
  readonly ends: PushEnd;
  /**
   * N: where the push first dropped by over 0.2 % before something caught it again, below `push`. A steady push of
   * that size lets it jump, and only slow movement was looked at. Left out: it never did.
   */
  readonly snapsAt?: number;
  /** m that the pushed point had moved along the push. */
  readonly moved: number;
  /** At that push. */
  readonly forces: Forces;
  readonly state: State;
  /** N and N·m by which the whole scene is out of balance there, summed apart from the solver. */
  readonly imbalance: { readonly force: number; readonly moment: number };
}

/** What ends a push. */
export type PushEnd =
  /** It moves on without a greater push: it slides or tips. `sliding` are contacts that slip, `open` those that lift. */
  | {
      readonly kind: 'plateau' | 'drop';
      readonly sliding: readonly string[];
      readonly open: readonly string[];
    }
  | { readonly kind: 'rating'; readonly use: Use }
  | { readonly kind: 'movement limit'; readonly members: readonly string[] };

/** What was found at one distance. */
interface Point {
  readonly distance: number;
  readonly push: number;
  readonly q: Float64Array;
  readonly notes: readonly LinkNote[];
  readonly use: Use | undefined;
}

type LinkNote = Pick<Model['links'][number], 'held' | 'slip'>;

const smallest = 1e-7;

/**
 * Pushes a body that rests, farther and farther, and looks how much push that takes: displacement control with the
 * push unknown. It ends where the push no longer grows and nothing is near that could still catch the body, where it
 * drops by 0.2 % and does not come back, at a rating, or at the movement limit.
 *
 * @param state at rest, as `settle` gives it.
 */
export function* push(scene: Scene, state: State, of: Push): Generator<void, PushResult> {
  const problems = problemsOf(scene);
  if (problems.length > 0) return { kind: 'not solved', reason: { kind: 'unsound scene', problems } };
  const model = modelOf(scene, state);
  const member = model.members.find((m) => m.kind === 'body' && m.id === of.body);
  if (member === undefined)
    return {
      kind: 'not solved',
      reason: { kind: 'unsound scene', problems: [{ kind: 'acts on nothing', id: 'push', on: of.body }] },
    };
  const direction = new Float64Array(model.unknowns);
  const arm = times(minus(of.at, member.at), 1 / model.length);
  addForce(direction, { first: member.first, turns: true, arm }, of.direction);
  const border: Bordered = { direction, distance: 0, push: 0 };
  const began = unknownsOf(model, state);
  const first = along(border, began);
  const points: Point[] = [pointAt(model, began, 0, 0)];
  const firstUse = points[0]?.use;
  if (firstUse !== undefined && firstUse.use > 1)
    return finish(scene, state, model, of, points, { kind: 'rating', use: firstUse });

  let step = model.movementLimit / 500;
  let peak = 0;
  for (let i = 0; i < 400; i++) {
    const last = points[points.length - 1] as Point;
    restore(model, last);
    // A shorter step is cheaper than a hard one, until it is short.
    const quick = step > model.movementLimit / 500;
    const q = Float64Array.from(last.q);
    border.distance = first + last.distance + step;
    border.push = last.push;
    const end = yield* relax(model, q, began, border, predicted(points, step), quick);
    if (end.kind === 'no convergence') {
      step /= quick ? 2 : 4;
      if (step < smallest * model.movementLimit)
        return { kind: 'not solved', reason: { kind: 'no convergence' } };
      continue;
    }
    if (end.kind === 'moved') {
      if (
        step > model.movementLimit / 256 &&
        farthest(model, last.q, began).distance < 0.95 * model.movementLimit
      ) {
        step /= 2;
        continue;
      }
      return finish(scene, state, model, of, points, {
        kind: 'movement limit',
        members: end.members.map((m) => m.id),
      });
    }
    const point = pointAt(model, q, last.distance + step, border.push);
    if (point.use !== undefined && point.use.use > 1) {
      const before = last.use?.use ?? 0;
      if (before < 0.9995 && step > smallest * model.movementLimit) {
        step *= Math.min(0.9, Math.max(0.05, (0.9999 - before) / (point.use.use - before)));
        continue;
      }
      return finish(scene, state, model, of, points, { kind: 'rating', use: point.use });
    }
    points.push(point);
    peak = Math.max(peak, point.push);
    if (isSpent(points, peak) && !mayCatch(model, points))
      return finish(scene, state, model, of, points, {
        kind: point.push < 0.998 * peak ? 'drop' : 'plateau',
        ...givingAt(model, point),
      });
    step = Math.min(step * 2, model.movementLimit / 16);
  }
  return { kind: 'not solved', reason: { kind: 'no convergence' } };
}

/** The next place, straight on from the last two. */
function predicted(points: readonly Point[], step: number): Float64Array {
  const last = points[points.length - 1] as Point;
  const before = points[points.length - 2];
  if (before === undefined) return Float64Array.from(last.q);
  const part = step / (last.distance - before.distance);
  return last.q.map((v, i) => v + part * (v - (before.q[i] as number)));
}

function pointAt(model: Model, q: Float64Array, distance: number, push: number): Point {
  return {
    distance,
    push,
    q: Float64Array.from(q),
    notes: model.links.map(({ held, slip }) => ({ held, slip })),
    use: mostUsed(model, q),
  };
}

function restore(model: Model, point: Point): void {
  for (const [i, link] of model.links.entries()) {
    const note = point.notes[i];
    if (note === undefined) continue;
    link.held = note.held;
    link.slip = note.slip;
  }
}

/** Whether the push has stopped growing: over the last half of the way by less than a part in two thousand. */
function isSpent(points: readonly Point[], peak: number): boolean {
  const last = points[points.length - 1] as Point;
  const earlier = points.filter((p) => p.distance <= last.distance / 2);
  const before = Math.max(0, ...earlier.map((p) => p.push));
  return points.length > 4 && peak - before <= 5e-4 * peak + 1e-9;
}

/** Whether something that carries nothing now comes to bear before the movement limit if the motion goes on. */
function mayCatch(model: Model, points: readonly Point[]): boolean {
  const last = points[points.length - 1] as Point;
  const before = points[points.length - 2] as Point;
  const way = last.q.map((v, i) => v - (before.q[i] as number));
  const origin = (points[0] as Point).q;
  const reach =
    (model.movementLimit - farthest(model, last.q, origin).distance) /
    farthest(model, way, new Float64Array(way.length)).distance;
  return linksAt(model, last.q).some(({ link, move, normal }) => {
    if (normal > 0) return false;
    const open = link.open - link.preload / link.stiffness + dot(move, link.axis);
    const closes = -dot(relativeMove(way, link), link.axis);
    return closes > 0 && open <= closes * reach;
  });
}

/** Contacts that slip, and elements that carry nothing, at a point. */
function givingAt(model: Model, point: Point): { readonly sliding: string[]; readonly open: string[] } {
  restore(model, point);
  const { contacts, struts, ties } = forcesAt(model, point.q);
  const friction = new Map(model.scene.contacts.map((c) => [c.id, c.friction]));
  const least = 1e-9 * model.force;
  return {
    sliding: contacts
      .filter((c) => {
        const most = (friction.get(c.id) ?? 0) * c.normal;
        return c.normal > least && Math.hypot(c.friction.x, c.friction.y, c.friction.z) >= most * (1 - 1e-6);
      })
      .map((c) => c.id),
    open: [
      ...contacts.filter((c) => c.normal <= least).map((c) => c.id),
      ...[...struts, ...ties].filter((e) => e.force <= least).map((e) => e.id),
    ],
  };
}

/** Reports the point with the greatest push. */
function finish(
  scene: Scene,
  before: State,
  model: Model,
  of: Push,
  points: readonly Point[],
  ends: PushEnd,
): PushResult {
  const best = points.reduce((a, b) => (b.push > a.push ? b : a));
  restore(model, best);
  const forces = forcesAt(model, best.q);
  takeNote(model, best.q);
  const state = stateAt(model, before, best.q);
  const size = best.push * model.force;
  const pushed = { on: { kind: 'body', id: of.body } as const, at: of.at, force: times(of.direction, size) };
  const { force, moment, inadmissible } = imbalanceOf(scene, state, forces, [pushed]);
  if (isOut(model, force, moment, inadmissible)) return outOfBalance(force, moment, inadmissible);
  const moved = best.distance * model.length;
  const snap = firstSnap(points.slice(0, points.indexOf(best) + 1));
  return {
    kind: 'held',
    push: size,
    ends,
    ...(snap === undefined ? {} : { snapsAt: snap * model.force }),
    moved,
    forces,
    state,
    imbalance: { force, moment },
  };
}

/** The push before the first drop by over 0.2 %. */
function firstSnap(points: readonly Point[]): number | undefined {
  let peak = 0;
  for (const { push } of points) {
    if (push < 0.998 * peak) return peak;
    peak = Math.max(peak, push);
  }
  return undefined;
}

import { type Outcome, push, type Scene, settle } from '../statics/index.js';
import type { PlanBody } from '../supports/plan-bodies.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { withPreloads } from './building-state.js';
import type { Finished } from './run-group.js';
import { sceneOf } from './scene-of.js';
import { pushLimit } from './settings.js';
import type { CaseOf, DirectionPush } from './standing.js';
import type { Group } from './standing-scene.js';

/** The finished plan at rest in one case, ready to be pushed. */
export interface PushReady {
  readonly of: CaseOf;
  /** With the movement limit of a push. */
  readonly scene: Scene;
  readonly rest: Outcome;
}

/** Brakes are not counted: a push is to be held by what the crew put in. */
export function* readyToPush(
  w: SupportWorkings,
  group: Group,
  { corner, state, preloads }: Finished,
  standing: readonly string[],
  tools: boolean,
): Generator<void, PushReady | undefined> {
  if (state === undefined) return undefined;
  const choice = { corner, standing, tools, brakes: false };
  const scene = withPreloads(sceneOf(w, group, choice).scene, preloads);
  const rest = yield* settle(scene, state);
  return { of: { corner, tools }, scene: { ...scene, movementLimit: pushLimit }, rest };
}

/** Pushes one body one way, at a height above the ground. */
export function* pushAt(
  group: Group,
  ready: PushReady | undefined,
  corner: CaseOf,
  body: PlanBody,
  height: number,
  angle: number,
): Generator<void, DirectionPush> {
  const center = body.corners[corner.corner[group.bodies.indexOf(body)] ?? 0];
  const base = { ...corner, angle, weight: center?.weight ?? 0, push: 0 };
  if (center === undefined || ready === undefined) return { ...base, ends: { kind: 'cannot stand' } };
  const { scene, rest } = ready;
  if (rest.kind === 'not solved') return { ...base, ends: undefined };
  if (rest.kind !== 'rests') return { ...base, ends: { kind: 'cannot stand' } };
  const at = { x: (center.center ?? center).x, y: (center.center ?? center).y, z: height };
  const direction = { x: Math.cos(angle), y: Math.sin(angle), z: 0 };
  const result = yield* push(scene, rest.state, { body: body.id, at, direction });
  if (result.kind === 'not solved') return { ...base, ends: undefined };
  return {
    ...base,
    push: Math.min(result.push, result.snapsAt ?? Number.POSITIVE_INFINITY),
    ends: result.ends,
  };
}

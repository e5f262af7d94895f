import { limitValue } from '../policy/limit.js';
import type { PlanBody } from '../resting/plan-bodies.js';
import { push, settle } from '../statics/index.js';
import type { SupportWorkings } from '../workings/support-workings.js';
import { withPreloads } from './building-state.js';
import type { Finished } from './run-group.js';
import { sceneOf } from './scene-of.js';
import { pushLimit } from './settings.js';
import type { CaseOf, DirectionPush } from './standing.js';
import type { Group } from './standing-scene.js';

/** What is pushed, and how. */
export interface PushPlan {
  readonly body: PlanBody;
  /** m above the ground. */
  readonly height: number;
  /** rad. */
  readonly angle: number;
}

/**
 * Pushes one body of the finished plan one way, at one corner. Brakes are not counted: a push is to be held by what the
 * crew put in.
 */
export function* pushAt(
  w: SupportWorkings,
  group: Group,
  finished: Finished,
  standing: readonly string[],
  { body, height, angle }: PushPlan,
  tools: boolean,
): Generator<void, DirectionPush> {
  const { corner } = finished;
  const of: CaseOf = { corner, tools };
  const useLimit = limitValue(w.plan.policy, 'use limit')?.low ?? 1;
  const row = group.bodies.indexOf(body);
  const center = body.corners[corner[row] ?? 0];
  const weight = center?.weight ?? 0;
  const base = { ...of, angle, weight, push: 0 };
  if (center === undefined || finished.state === undefined)
    return { ...base, ends: { kind: 'cannot stand' } };
  const scene = withPreloads(
    sceneOf(w, group, { corner, standing, tools, brakes: false, useLimit }).scene,
    finished.preloads,
  );
  const rest = yield* settle(scene, finished.state);
  if (rest.kind === 'not solved') return { ...base, ends: undefined };
  if (rest.kind !== 'rests') return { ...base, ends: { kind: 'cannot stand' } };
  const at = { x: (center.center ?? center).x, y: (center.center ?? center).y, z: height };
  const direction = { x: Math.cos(angle), y: Math.sin(angle), z: 0 };
  const result = yield* push({ ...scene, movementLimit: pushLimit }, rest.state, {
    body: body.id,
    at,
    direction,
  });
  if (result.kind === 'not solved') return { ...base, ends: undefined };
  return {
    ...base,
    push: Math.min(result.push, result.snapsAt ?? Number.POSITIVE_INFINITY),
    ends: result.ends,
  };
}

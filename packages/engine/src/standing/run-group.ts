import type { ElementId } from '@cribwright/model';
import { limitValue } from '@cribwright/model/internal';
import type { BuildingStage } from '../loss/building.js';
import type { JointCorner } from '../loss/components.js';
import type { Loss } from '../loss/losses.js';
import {
  type Forces,
  lose,
  type Outcome,
  type Rests,
  type Scene,
  type State,
  settle,
} from '../statics/index.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { asFound, type Built, nextStage, withPreloads } from './building-state.js';
import { sceneOf } from './scene-of.js';
import type { CaseOf, StandingFailure, WorstLoad } from './standing.js';
import type { Group, SceneChoice, StandingScene } from './standing-scene.js';
import { whyItFails } from './why-it-fails.js';

/** A load case while it is being worked out over the corners. */
export interface CaseRecord {
  readonly loss: Loss | undefined;
  failure: StandingFailure | undefined;
  worse: StandingFailure | undefined;
  /** N that what is lost carried at most in a corner in which the loss was asked. */
  carried: number;
  readonly loads: Map<string, WorstLoad>;
  readonly thrusts: Map<ElementId, WorstLoad>;
}

export interface StageRecord {
  readonly stage: BuildingStage;
  readonly asBuilt: CaseRecord;
  readonly losses: readonly CaseRecord[];
}

export const emptyCase = (loss: Loss | undefined): CaseRecord => ({
  loss,
  failure: undefined,
  worse: undefined,
  carried: 0,
  loads: new Map(),
  thrusts: new Map(),
});

/** What the finished plan came to at one corner, for the pushes. */
export interface Finished {
  readonly corner: JointCorner;
  readonly preloads: ReadonlyMap<string, number>;
  readonly state: State | undefined;
}

/**
 * Everything of one corner: each stage, and at each stage each loss.
 *
 * @param everyLoss whether losses before the last stage are asked as well where what is lost carries no more than in a
 * corner before.
 */
export function* runCorner(
  w: SupportWorkings,
  group: Group,
  corner: JointCorner,
  records: readonly StageRecord[],
  everyLoss: boolean,
): Generator<void, Finished> {
  const factor = Math.max(1, limitValue(w.plan.policy, 'sudden loss factor')?.high ?? 1);
  const tools = w.plan.toolLoads.some((l) => group.bodies.some((b) => b.id === l.on));
  let built: Built | undefined;
  let there: readonly string[] = [];
  let earlier: Stood | undefined;
  const last = records.length - 1;
  for (const [s, record] of records.entries()) {
    const { stage } = record;
    const choice: SceneChoice = { corner, standing: stage.standing, tools: false, brakes: true };
    const standing = sceneOf(w, group, choice);
    const isMine = (id: string) => standing.parts.has(id);
    const now = stage.standing.filter(isMine);
    const before: Built | undefined = built;
    const was = there;
    built =
      before === undefined
        ? yield* asFound(standing)
        : yield* nextStage(standing, before, {
            added: now.filter((id) => !was.includes(id)),
            gone: was.filter((id) => !now.includes(id)),
            there: now,
          });
    there = now;
    const scene = withPreloads(standing.scene, built.preloads);
    yield* take(record.asBuilt, built.scene, built.from, built.outcome, { corner, tools: false });
    yield;
    const stood: Stood | undefined =
      built.outcome.kind === 'rests' ? { standing, scene, rest: built.outcome } : undefined;
    const every = s === last || everyLoss;
    if (stood !== undefined) yield* losses(record, stood, earlier, { corner, tools: false }, every, factor);
    earlier = stood;
    if (s !== last || !tools || built.state === undefined) continue;
    const working = withPreloads(sceneOf(w, group, { ...choice, tools: true }).scene, built.preloads);
    const outcome = yield* settle(working, built.state);
    yield* take(record.asBuilt, working, built.state, outcome, { corner, tools: true });
    if (outcome.kind === 'rests')
      yield* losses(
        record,
        { standing, scene: working, rest: outcome },
        undefined,
        { corner, tools: true },
        true,
        factor,
      );
  }
  return { corner, preloads: built?.preloads ?? new Map(), state: built?.state };
}

/** A stage that rests. */
interface Stood {
  readonly standing: StandingScene;
  readonly scene: Scene;
  readonly rest: Rests;
}

/** By less than this share more, a loss is not asked again before the last stage. */
const hardlyMore = 0.02;

function* losses(
  record: StageRecord,
  stood: Stood,
  earlier: Stood | undefined,
  of: CaseOf,
  every: boolean,
  factor: number,
): Generator<void, void> {
  const { scene, rest } = stood;
  const before = carried(scene, rest.forces);
  for (const lost of record.losses) {
    const from = lost.loss === undefined ? rest.state : without(stood, lost.loss);
    const carried = takenBetween(scene, rest.state, from).reduce(
      (sum, id) => sum + (before.loads.get(id) ?? 0),
      0,
    );
    // What carries nothing is not missed.
    if (!(carried > 0)) continue;
    if (!every && carried <= lost.carried * (1 + hardlyMore)) continue;
    lost.carried = Math.max(lost.carried, carried);
    const outcome = yield* settle(scene, from);
    yield* take(lost, scene, from, outcome, of, { factor, before });
    if (outcome.kind === 'rests' || lost.worse !== undefined || earlier === undefined) continue;
    if (lost.loss === undefined) continue;
    const then = yield* settle(earlier.scene, without(earlier, lost.loss));
    if (then.kind === 'rests') lost.worse = yield* whyItFails(scene, from, outcome, of);
  }
}

const without = ({ standing, scene, rest }: Stood, loss: Loss): State =>
  lose(scene, rest.state, idsOf(loss, standing));

/** Elements that are there before and lost after. */
function takenBetween(scene: Scene, before: State, after: State): readonly string[] {
  const taken = (
    of: readonly { readonly id: string }[],
    rows: (s: State) => readonly { readonly presence: string }[],
  ) =>
    of
      .filter((_, i) => rows(before)[i]?.presence === 'there' && rows(after)[i]?.presence !== 'there')
      .map((e) => e.id);
  return [
    ...taken(scene.contacts, (s) => s.contacts),
    ...taken(scene.struts, (s) => s.struts),
    ...taken(scene.ties, (s) => s.ties),
  ];
}

/** What of the scene a loss takes: the contact itself; of a strut its foot; of a crib the stack with its base. */
export function idsOf(loss: Loss, { scene, parts }: StandingScene): readonly string[] {
  const contacts = new Map(scene.contacts.map((c) => [c.id, c]));
  return [
    ...new Set(
      loss.points.flatMap((id) => {
        const contact = contacts.get(id);
        if (contact === undefined) return parts.get(id) ?? [];
        const { lower } = contact;
        return lower.kind === 'body' && parts.has(lower.id) ? (parts.get(lower.id) ?? []) : [id];
      }),
    ),
  ];
}

/** A loss that may come at once. */
interface Sudden {
  /** What a sudden loss adds, over what a slow one adds; at least 1. */
  readonly factor: number;
  /** What was carried before. */
  readonly before: Carried;
}

function* take(
  record: CaseRecord,
  scene: Scene,
  from: State,
  outcome: Outcome,
  of: CaseOf,
  sudden?: Sudden,
): Generator<void, void> {
  if (outcome.kind !== 'rests') {
    if (record.failure === undefined) record.failure = yield* whyItFails(scene, from, outcome, of);
    return;
  }
  const now = carried(scene, outcome.forces);
  note(record.loads, now.loads, of, sudden?.factor, sudden?.before.loads);
  note(record.thrusts, now.thrusts, of, sudden?.factor, sudden?.before.thrusts);
}

/** Keeps what is more than before. What a loss adds is counted as often as the policy says; relief is counted once. */
function note(
  into: Map<string, WorstLoad>,
  now: ReadonlyMap<string, number>,
  of: CaseOf,
  factor = 1,
  before: ReadonlyMap<string, number> = now,
): void {
  for (const [id, slow] of now) {
    const most = slow + (factor - 1) * Math.max(0, slow - (before.get(id) ?? 0));
    if (most > (into.get(id)?.most ?? -1) * (1 + 1e-9))
      into.set(id, { ...of, most, ...(factor > 1 ? { sudden: factor } : {}) });
  }
}

/** N by id, as `StandingCase` has them. */
interface Carried {
  readonly loads: ReadonlyMap<string, number>;
  readonly thrusts: ReadonlyMap<ElementId, number>;
}

function carried(scene: Scene, { contacts, struts, ties }: Forces): Carried {
  const loads = new Map<string, number>();
  const thrusts = new Map<ElementId, number>();
  const stacks = new Map<string, number>();
  const below = new Map(scene.contacts.map((c) => [c.id, c.lower]));
  for (const c of contacts) {
    loads.set(c.id, c.normal);
    const on = below.get(c.id);
    if (on?.kind === 'body') stacks.set(on.id, (stacks.get(on.id) ?? 0) + c.normal);
    if (c.id.endsWith('/ground'))
      thrusts.set(c.id.slice(0, -'/ground'.length), Math.hypot(c.friction.x, c.friction.y));
  }
  for (const [id, sum] of stacks) if (id.startsWith('crib/')) loads.set(id, sum);
  for (const { id, force } of [...struts, ...ties]) loads.set(id, force);
  return { loads, thrusts };
}

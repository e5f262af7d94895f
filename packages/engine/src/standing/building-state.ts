import {
  type AxialForce,
  lose,
  type Outcome,
  place,
  type Scene,
  type State,
  settle,
  start,
} from '../statics/index.js';
import { takeUpLimit } from './settings.js';
import type { StandingScene } from './standing-scene.js';

/** How far a plan has been built in one case: what it came to, and what its wedges and pumps were driven to. */
export interface Built {
  readonly outcome: Outcome;
  /** What was let go, and from where. */
  readonly scene: Scene;
  readonly from: State;
  /** The last state of rest, from which the next stage goes on; nothing where it did not rest. */
  readonly state: State | undefined;
  /** N to enter for an element so that it presses with its stated preload once all has settled. */
  readonly preloads: ReadonlyMap<string, number>;
}

/** As found: the weight comes onto what was there before the crew. */
export function* asFound({ scene, parts }: StandingScene): Generator<void, Built> {
  return yield* letGo(scene, start(scene, waitingOf(parts, [])), new Map());
}

/** Weight that comes onto everything at once: springs take it up. */
function* letGo(scene: Scene, from: State, preloads: ReadonlyMap<string, number>): Generator<void, Built> {
  const loose = { ...scene, movementLimit: takeUpLimit };
  const outcome = yield* settle(loose, from);
  return { outcome, scene: loose, from, state: stateOf(outcome), preloads };
}

/** The next stage: takes out, puts in snug, drives wedges and pumps, and lets it settle. */
export function* nextStage(
  standing: StandingScene,
  before: Built,
  {
    added,
    gone,
    there,
  }: {
    readonly added: readonly string[];
    readonly gone: readonly string[];
    readonly there: readonly string[];
  },
): Generator<void, Built> {
  const { parts } = standing;
  const preloads = new Map(before.preloads);
  for (const id of gone.flatMap((g) => parts.get(g) ?? [])) preloads.delete(id);
  if (before.state === undefined) {
    // It did not rest, so that it has no place to start from: what catches it carries from the start.
    const scene = withPreloads(standing.scene, preloads);
    return yield* letGo(scene, start(scene, waitingOf(parts, there)), preloads);
  }
  const out = gone.flatMap((g) => parts.get(g) ?? []);
  const left = backToWaiting(standing.scene, lose(standing.scene, before.state, out), out);
  const scene = withPreloads(standing.scene, preloads);
  const ids = added.flatMap((a) => parts.get(a) ?? []);
  const [below, above] = belowAndAbove(scene, new Set(ids));
  // A stack and a foot carry their own weight before anything rests on them.
  const laid = below.length === 0 ? undefined : yield* settle(scene, place(scene, left, below));
  const base = laid?.kind === 'rests' ? laid.state : below.length === 0 ? left : place(scene, left, below);
  return yield* driven(standing.scene, base, above, preloads);
}

/** Rounds of driving wedges and pumping struts: each takes from the other, and the ground yields under both. */
const rounds = 8;
/** Share of the preload by which a round may miss. */
const nearEnough = 0.01;

function* driven(
  scene: Scene,
  base: State,
  above: readonly string[],
  known: ReadonlyMap<string, number>,
): Generator<void, Built> {
  const preloads = new Map(known);
  const asked = preloadsOf(scene, new Set(above));
  for (const [id, wanted] of asked) preloads.set(id, wanted);
  for (let round = 1; ; round++) {
    const now = withPreloads(scene, preloads);
    const from = place(now, base, above);
    const outcome = yield* settle(now, from);
    if (outcome.kind !== 'rests') return { outcome, scene: now, from, state: undefined, preloads };
    const { contacts, struts, ties } = outcome.forces;
    const forces = new Map(
      [...contacts.map((c): AxialForce => ({ id: c.id, force: c.normal })), ...struts, ...ties].map((f) => [
        f.id,
        f.force,
      ]),
    );
    const missed = [...asked].filter(
      ([id, wanted]) => Math.abs((forces.get(id) ?? 0) - wanted) > nearEnough * wanted,
    );
    if (missed.length === 0 || round === rounds)
      return { outcome, scene: now, from, state: outcome.state, preloads };
    for (const [id, wanted] of missed) {
      const force = forces.get(id) ?? 0;
      const entered = preloads.get(id) ?? wanted;
      preloads.set(id, entered * Math.min(10, Math.max(0.1, wanted / Math.max(force, wanted / 10))));
    }
  }
}

const preloadsOf = (scene: Scene, ids: ReadonlySet<string>): ReadonlyMap<string, number> =>
  new Map(
    [
      ...scene.contacts.map((c) => [c.id, c.preload ?? 0] as const),
      ...scene.struts.map((s) => [s.id, s.preload ?? 0] as const),
      ...scene.ties.map((t) => [t.id, t.pretension ?? 0] as const),
    ].filter(([id, preload]) => preload > 0 && ids.has(id)),
  );

export const withPreloads = (scene: Scene, preloads: ReadonlyMap<string, number>): Scene =>
  preloads.size === 0
    ? scene
    : {
        ...scene,
        contacts: scene.contacts.map((c) => ({ ...c, preload: preloads.get(c.id) ?? c.preload ?? 0 })),
        struts: scene.struts.map((s) => ({ ...s, preload: preloads.get(s.id) ?? s.preload ?? 0 })),
        ties: scene.ties.map((t) => ({ ...t, pretension: preloads.get(t.id) ?? t.pretension ?? 0 })),
      };

/** What stands on the ground first, and what then presses on a vehicle or pulls. */
function belowAndAbove(
  scene: Scene,
  ids: ReadonlySet<string>,
): readonly [readonly string[], readonly string[]] {
  const bodies = new Set(scene.bodies.map((b) => b.id).filter((id) => ids.has(id)));
  const below = [
    ...bodies,
    ...scene.feet.map((f) => f.id),
    ...scene.contacts
      .filter((c) => c.upper.kind === 'foot' || (c.upper.kind === 'body' && bodies.has(c.upper.id)))
      .map((c) => c.id),
  ].filter((id) => ids.has(id));
  const first = new Set(below);
  return [below, [...ids].filter((id) => !first.has(id))];
}

const waitingOf = (parts: StandingScene['parts'], there: readonly string[]): readonly string[] =>
  [...parts].flatMap(([id, all]) => (there.includes(id) ? [] : all));

const stateOf = (outcome: Outcome): State | undefined =>
  outcome.kind === 'rests' ? outcome.state : undefined;

/** What is taken out may be put in again. */
function backToWaiting(scene: Scene, state: State, ids: readonly string[]): State {
  const out = new Set(ids);
  const still = { x: 0, y: 0, z: 0 };
  const wait = <S extends { readonly presence: string }>(
    rows: readonly S[],
    of: readonly { readonly id: string }[],
    reset: Partial<S>,
  ) => rows.map((s, i) => (out.has(of[i]?.id ?? '') ? { ...s, ...reset, presence: 'waiting' as const } : s));
  return {
    bodies: wait(state.bodies, scene.bodies, { moved: still, turned: still }),
    feet: wait(state.feet, scene.feet, { moved: still }),
    contacts: wait(state.contacts, scene.contacts, {}),
    struts: wait(state.struts, scene.struts, {}),
    ties: wait(state.ties, scene.ties, {}),
  };
}

import { at } from '../resting/at.js';
import { addAlong, type ContactState } from '../resting/contact-law.js';
import type { Hint } from '../resting/piece.js';
import { restScaled } from '../resting/rest.js';
import type { ScaledSystem } from '../resting/scaled-system.js';
import type { Rest } from '../resting/system.js';
import type { SupportPoint } from '../workings/support-points.js';

/** What stands at a stage, and which points each loss takes away. */
export interface StageOfPoints {
  readonly there: readonly boolean[];
  readonly losses: readonly { readonly id: string; readonly hits: readonly number[] }[];
}

/**
 * Told of each answer: the stage, the place of the loss in its list or `undefined` as built, and how far each
 * contact had closed when it was placed (scaled; valid until the next stage).
 */
export type Report = (stage: number, loss: number | undefined, rest: Rest, placedAt: Float64Array) => void;

/**
 * Builds a component stage by stage at one corner of its ranges, and at each stage takes away one loss at a time.
 *
 * What carried the load before a support was placed goes on carrying it: a support starts at its preload, and
 * takes its share only of what changes afterwards.
 */
export function buildCorner(
  scaled: ScaledSystem,
  points: readonly SupportPoint[],
  stages: readonly StageOfPoints[],
  load: Float64Array,
  report: Report,
  hints: Hints = new Map(),
): void {
  const state: ContactState = {
    present: new Uint8Array(points.length),
    preload: new Float64Array(points.length),
    placedAt: new Float64Array(points.length),
  };
  let start: Float64Array = new Float64Array(load.length);
  let now: Rest | undefined;
  let known = new Map<string, Rest>();
  for (const [s, stage] of stages.entries()) {
    const change = changeOf(state, stage.there);
    if (change.length > 0 || now === undefined)
      now = place({ scaled, points, state, load, start, hint: hintOf(hints, `${s}`) }, change, now);
    if (change.length > 0) known = new Map();
    if (now.kind === 'rests') start = now.q;
    report(s, undefined, now, state.placedAt);
    for (const [l, { id, hits }] of stage.losses.entries()) {
      const found =
        known.get(id) ?? afterLoss(scaled, state, load, start, now, hits, hintOf(hints, `${s}/${id}`));
      known.set(id, found);
      report(s, l, found, state.placedAt);
    }
  }
}

/** Where each case of each stage ended at the corner before: most corners end alike. */
export type Hints = Map<string, Hint>;

function hintOf(hints: Hints, key: string): Hint {
  const found = hints.get(key) ?? { piece: undefined, motion: undefined };
  hints.set(key, found);
  return found;
}

/** What does not push is not missed. */
function afterLoss(
  scaled: ScaledSystem,
  state: ContactState,
  load: Float64Array,
  start: Float64Array,
  now: Rest,
  hits: readonly number[],
  hint: Hint,
): Rest {
  if (now.kind === 'rests' && !now.balanced && hits.every((i) => now.forces[i] === 0)) return now;
  const present = Uint8Array.from(state.present);
  for (const i of hits) present[i] = 0;
  return restScaled(scaled, { ...state, present }, load, start, hint);
}

const changeOf = (state: ContactState, there: readonly boolean[]): readonly number[] =>
  there.flatMap((is, i) => (is === (state.present[i] === 1) ? [] : [i]));

/** Takes out and puts in, and lets what rests settle anew where that changes anything. */
function place(
  {
    scaled,
    points,
    state,
    load,
    start,
    hint,
  }: {
    readonly scaled: ScaledSystem;
    readonly points: readonly SupportPoint[];
    readonly state: ContactState;
    readonly load: Float64Array;
    readonly start: Float64Array;
    readonly hint: Hint;
  },
  change: readonly number[],
  before: Rest | undefined,
): Rest {
  const gone = change.filter((i) => state.present[i] === 1);
  const added = change.filter((i) => state.present[i] !== 1);
  for (const i of gone) state.present[i] = 0;
  const rested = before?.kind === 'rests' && !before.balanced;
  const kept =
    before === undefined || (rested && gone.length === 0) ? before : restScaled(scaled, state, load, start);
  const driven = added.filter((i) => (points[i]?.preload ?? 0) > 0);
  // A wedge is driven until it presses with its preload: the bodies settle under that push, and then it holds.
  const push = Float64Array.from(load);
  for (const i of driven) addAlong(scaled, i, -(points[i]?.preload ?? 0) / scaled.force, push);
  const pushed =
    driven.length === 0 || kept?.kind !== 'rests' ? kept : restScaled(scaled, state, push, kept.q);
  const settled = pushed?.kind === 'rests' ? pushed : kept;
  for (const i of added) {
    state.present[i] = 1;
    // A body that did not rest has no place to start from: what catches it carries from the start.
    state.placedAt[i] = settled?.kind === 'rests' ? at(settled.closings, i) / scaled.length : 0;
    state.preload[i] = (points[i]?.preload ?? 0) / scaled.force;
  }
  if (settled?.kind === 'rests' && !settled.balanced && driven.length === 0) return settled;
  return restScaled(scaled, state, load, settled?.kind === 'rests' ? settled.q : start, hint);
}

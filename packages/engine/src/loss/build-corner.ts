import { addAlong, type ContactState, closingOf } from '../resting/contact-law.js';
import type { Hint } from '../resting/piece.js';
import { restScaled } from '../resting/rest.js';
import type { ScaledSystem } from '../resting/scaled-system.js';
import type { Outcome } from '../resting/system.js';
import { inOneGo } from '../stepwise/stepwise.js';
import type { SupportPoint } from '../supports/support-points.js';

/** What a stage changes in what stands, and which points each loss then takes away. Points by their place. */
export interface StageOfPoints {
  readonly added: readonly number[];
  readonly gone: readonly number[];
  readonly losses: readonly { readonly id: string; readonly hits: readonly number[] }[];
}

export const changesNothing = ({ added, gone }: StageOfPoints): boolean => added.length + gone.length === 0;

/**
 * Told of each answer: the stage, the place of the loss in its list or `undefined` as built, how far each contact
 * had closed when it was placed (scaled; valid until the next stage), and as built through what it came to that:
 * while wedges were driven, and before crews worked in it.
 */
export type ReportCase = (
  stage: number,
  loss: number | undefined,
  rest: Outcome,
  placedAt: Float64Array,
  through?: readonly Outcome[],
) => void;

/** What weighs on the bodies: while things are put in, and while crews work in the finished system. Often the same. */
export interface CornerLoads {
  readonly building: Float64Array;
  readonly working: Float64Array;
}

/** Which losses are worked out, by stage and by their place in its list. */
export type WantedLosses = (stage: number, loss: number) => boolean;
const everyLoss: WantedLosses = () => true;

/** Where each case of a stage ended at the corner before: most corners end alike. */
export interface StageHints {
  readonly asBuilt: Hint;
  readonly losses: readonly Hint[];
}

const nothingKnown = (): Hint => ({ pieces: [], motion: undefined });

export const noHints = (stages: readonly StageOfPoints[]): readonly StageHints[] =>
  stages.map(({ losses }) => ({ asBuilt: nothingKnown(), losses: losses.map(nothingKnown) }));

/** So many cases are worked out between two stops. An ordinary plan has fewer at each place. */
const casesAtOnce = 400;

/**
 * Builds a component stage by stage at one corner of its ranges, and at each stage takes away one loss at a time.
 * Stops after some hundreds of cases, between two stages, so that whoever drives it can go on later or drop it.
 *
 * What carried the load before a support was placed goes on carrying it: a support starts at its preload, and
 * takes its share only of what changes afterward.
 */
export function* buildCornerSteps(
  scaled: ScaledSystem,
  points: readonly SupportPoint[],
  stages: readonly StageOfPoints[],
  { building: load, working }: CornerLoads,
  report: ReportCase,
  hints: readonly StageHints[] = noHints(stages),
  wanted: WantedLosses = everyLoss,
): Generator<void, void> {
  const state: ContactState = {
    present: new Uint8Array(points.length),
    preload: new Float64Array(points.length),
    placedAt: new Float64Array(points.length),
  };
  let start: Float64Array = new Float64Array(load.length);
  let now: Outcome | undefined;
  let known = new Map<string, Outcome>();
  const finished = stages.reduce((last, stage, s) => (changesNothing(stage) ? last : s), 0);
  let cases = 0;
  for (const [s, stage] of stages.entries()) {
    const changes = !changesNothing(stage);
    const { built, driven }: Placed =
      changes || now === undefined
        ? place({ scaled, points, state, load, start, hint: hints[s]?.asBuilt }, stage, now)
        : { built: now, driven: undefined };
    now = built;
    if (changes) known = new Map();
    if (built.kind === 'rests') start = built.q;
    const through = driven === undefined ? [] : [driven];
    const stands = working === load || s < finished ? built : restScaled(scaled, state, working, start);
    if (stands !== built) through.push(built);
    report(s, undefined, stands, state.placedAt, through);
    stage.losses.forEach(({ id, hits }, l) => {
      if (!wanted(s, l)) return;
      const found =
        known.get(id) ??
        afterLoss(scaled, state, s < finished ? load : working, start, stands, hits, hints[s]?.losses[l]);
      known.set(id, found);
      report(s, l, found, state.placedAt);
    });
    cases += 1 + stage.losses.length;
    if (cases < casesAtOnce) continue;
    cases = 0;
    yield;
  }
}

/** The same in one go. */
export const buildCorner = (...at: Parameters<typeof buildCornerSteps>): void =>
  inOneGo(buildCornerSteps(...at));

/** What does not push is not missed. */
function afterLoss(
  scaled: ScaledSystem,
  state: ContactState,
  load: Float64Array,
  start: Float64Array,
  now: Outcome,
  hits: readonly number[],
  hint: Hint | undefined,
): Outcome {
  if (now.kind === 'rests' && !now.balanced && hits.every((i) => now.forces[i] === 0)) return now;
  const present = state.present.slice();
  for (const i of hits) present[i] = 0;
  return restScaled(scaled, { ...state, present }, load, start, hint);
}

interface Placed {
  readonly built: Outcome;
  /** While its wedges were driven, where any were. */
  readonly driven: Outcome | undefined;
}

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
    readonly hint: Hint | undefined;
  },
  { added, gone }: StageOfPoints,
  before: Outcome | undefined,
): Placed {
  for (const i of gone) state.present[i] = 0;
  const rested = before?.kind === 'rests' && !before.balanced;
  const kept =
    before === undefined || (rested && gone.length === 0) ? before : restScaled(scaled, state, load, start);
  const driven = added.filter((i) => (points[i]?.preload ?? 0) > 0);
  // A wedge is driven until it presses with its preload: the bodies settle under that push, and then it holds.
  const push = load.slice();
  for (const i of driven) addAlong(scaled, i, -(points[i]?.preload ?? 0) / scaled.force, push);
  const pushed =
    driven.length === 0 || kept?.kind !== 'rests' ? kept : restScaled(scaled, state, push, kept.q);
  const settled = pushed?.kind === 'rests' ? pushed : kept;
  for (const i of added) {
    state.present[i] = 1;
    // A body that did not rest has no place to start from: what catches it carries from the start.
    state.placedAt[i] = settled?.kind === 'rests' ? closingOf(scaled, i, settled.q) : 0;
    state.preload[i] = (points[i]?.preload ?? 0) / scaled.force;
  }
  if (settled?.kind === 'rests' && !settled.balanced && driven.length === 0)
    return { built: settled, driven: undefined };
  return {
    built: restScaled(scaled, state, load, settled?.kind === 'rests' ? settled.q : start, hint),
    driven: pushed === kept ? undefined : pushed,
  };
}

import { at } from '../resting/at.js';
import type { ContactState } from '../resting/contact-law.js';
import { restScaled } from '../resting/rest.js';
import { type ScaledSystem, scaledLoad, scaledSystem } from '../resting/scaled-system.js';
import type { Motion, Rest } from '../resting/system.js';
import type { SupportPoint } from '../workings/support-points.js';
import type { BuildingStage } from './building.js';
import { type Component, type JointCorner, jointCorners } from './components.js';
import type { Loss } from './losses.js';

/** One case at one stage, over every corner of the ranges. */
export interface CaseRun {
  readonly loss: Loss | undefined;
  /** Which points of the component stand at this stage. */
  readonly there: readonly boolean[];
  /** Least and greatest force at each point of the component, N, and the corner of the greatest. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly worst: Int32Array;
  /** The same for the sum over each crib's contacts, in the order of `wholes`. */
  readonly whole: {
    readonly low: Float64Array;
    readonly high: Float64Array;
    readonly worst: Int32Array;
    /** Forces at all points of the component when the sum was greatest. */
    readonly forces: (Float64Array | undefined)[];
  };
  /** Forces at all points at the last corner: the heavy end. */
  heavy: Float64Array | undefined;
  /** The first corner in which it does not rest. */
  fall: { readonly corner: JointCorner; readonly motions: readonly Motion[] } | undefined;
  /** The first corner in which it only balances, on a line or a point. */
  balance: JointCorner | undefined;
  unsolved: boolean;
  smallSteps: boolean;
}

/** The elements of a component that carry by several contacts. */
export const wholes = ({ points }: Component): readonly string[] => [
  ...new Set(points.filter((p) => !p.original).map((p) => p.element)),
];

export interface StageRun {
  readonly asBuilt: CaseRun;
  readonly losses: readonly CaseRun[];
}

/** Which points are there at a stage. */
export type Presence = (stage: BuildingStage, point: SupportPoint) => boolean;

export interface RunOptions {
  readonly presence: Presence;
  /** Stiffness of a point, N/m; lets a second run vary it. */
  readonly stiffness: (point: SupportPoint) => number;
  /** Work out losses at every stage, or at the last alone. */
  readonly lossesAt: 'every stage' | 'last stage';
}

/**
 * Builds a component stage by stage at every corner of its ranges, and takes away one loss at a time.
 *
 * What carried the load before a support was placed goes on carrying it: a support starts at its preload, and
 * takes its share only of what changes afterwards.
 */
export function runStages(
  component: Component,
  stages: readonly BuildingStage[],
  losses: readonly Loss[],
  options: RunOptions,
): { readonly corners: readonly JointCorner[]; readonly stages: readonly StageRun[] } {
  const { bodies, points } = component;
  const corners = jointCorners(bodies);
  const bodiesAt = (corner: JointCorner) =>
    bodies.flatMap((b, i) => {
      const c = b.corners[corner[i] ?? 0];
      return c === undefined ? [] : [{ id: b.id, weight: c.weight, x: c.x, y: c.y }];
    });
  const scaled = scaledSystem({
    bodies: bodiesAt(corners.at(-1) ?? []),
    springs: points.map((p) => ({ ...p, x: p.at.x, y: p.at.y, stiffness: options.stiffness(p) })),
  });
  const elements = wholes(component);
  const wholeOf = points.map((p) => elements.indexOf(p.element));
  const mine = losses
    .map((loss) => ({ loss, hits: points.flatMap((p, i) => (loss.points.includes(p.id) ? [i] : [])) }))
    .filter(({ hits }) => hits.length > 0);
  const runs = stages.map((stage, s) => {
    const there = points.map((p) => options.presence(stage, p));
    const wanted = options.lossesAt === 'every stage' || s === stages.length - 1;
    return {
      there,
      asBuilt: emptyRun(there, elements.length, undefined),
      losses: wanted
        ? mine
            .filter(({ hits }) => hits.some((i) => there[i] === true))
            .map(({ loss, hits }) => ({ hits, run: emptyRun(there, elements.length, loss) }))
        : [],
    };
  });
  corners.forEach((corner, index) => {
    runCorner(scaled, { points, wholeOf }, runs, scaledLoad(scaled, bodiesAt(corner)), { corner, index });
  });
  return {
    corners,
    stages: runs.map((r) => ({ asBuilt: r.asBuilt, losses: r.losses.map((l) => l.run) })),
  };
}

interface Run {
  readonly there: readonly boolean[];
  readonly asBuilt: CaseRun;
  readonly losses: readonly { readonly hits: readonly number[]; readonly run: CaseRun }[];
}

interface Held {
  readonly points: readonly SupportPoint[];
  /** For each point, which of the `wholes` it belongs to; -1 for none. */
  readonly wholeOf: readonly number[];
}

interface Corner {
  readonly corner: JointCorner;
  readonly index: number;
}

function runCorner(
  scaled: ScaledSystem,
  { points, wholeOf }: Held,
  runs: readonly Run[],
  load: Float64Array,
  corner: Corner,
): void {
  const state: ContactState = {
    present: new Uint8Array(points.length),
    preload: new Float64Array(points.length),
    placedAt: new Float64Array(points.length),
  };
  let start: Float64Array = new Float64Array(load.length);
  let now: Rest | undefined;
  let known = new Map<string, Rest>();
  for (const run of runs) {
    const { placed, settles } = place(scaled, points, run.there, state, now);
    if (settles || now === undefined) now = restScaled(scaled, state, load, start);
    if (placed) known = new Map();
    if (now.kind === 'rests') start = now.q;
    record(run.asBuilt, now, corner, wholeOf);
    for (const { hits, run: lost } of run.losses) {
      const id = lost.loss?.id ?? '';
      const found = known.get(id) ?? afterLoss(scaled, state, load, start, now, hits);
      known.set(id, found);
      record(lost, found, corner, wholeOf);
    }
  }
}

/** What does not push is not missed. */
function afterLoss(
  scaled: ScaledSystem,
  state: ContactState,
  load: Float64Array,
  start: Float64Array,
  now: Rest,
  hits: readonly number[],
): Rest {
  if (now.kind === 'rests' && !now.balanced && hits.every((i) => now.forces[i] === 0)) return now;
  const present = Uint8Array.from(state.present);
  for (const i of hits) present[i] = 0;
  return restScaled(scaled, { ...state, present }, load, start);
}

/** Puts in and takes out. Says whether anything was, and whether what rested must settle anew. */
function place(
  scaled: ScaledSystem,
  points: readonly SupportPoint[],
  there: readonly boolean[],
  state: ContactState,
  now: Rest | undefined,
): { readonly placed: boolean; readonly settles: boolean } {
  let placed = false;
  let settles = false;
  points.forEach((p, i) => {
    const is = there[i] === true;
    if (is === (state.present[i] === 1)) return;
    placed = true;
    state.present[i] = is ? 1 : 0;
    // A body that did not rest has no place to start from: what catches it carries from the start.
    state.placedAt[i] = is && now?.kind === 'rests' ? at(now.closings, i) / scaled.length : 0;
    state.preload[i] = is ? p.preload / scaled.force : 0;
    if (!is || p.preload > 0 || now?.kind !== 'rests' || now.balanced) settles = true;
  });
  return { placed, settles };
}

const extremes = (count: number) => ({
  low: new Float64Array(count).fill(Number.POSITIVE_INFINITY),
  high: new Float64Array(count).fill(Number.NEGATIVE_INFINITY),
  worst: new Int32Array(count),
});

const emptyRun = (there: readonly boolean[], elements: number, loss: Loss | undefined): CaseRun => ({
  loss,
  there,
  ...extremes(there.length),
  whole: { ...extremes(elements), forces: [] },
  heavy: undefined,
  fall: undefined,
  balance: undefined,
  unsolved: false,
  smallSteps: false,
});

function record(run: CaseRun, rest: Rest, { corner, index }: Corner, wholeOf: readonly number[]): void {
  if (rest.kind === 'unsolved') run.unsolved = true;
  else if (rest.kind === 'falls') run.fall ??= { corner, motions: rest.motions };
  else {
    if (rest.balanced) run.balance ??= corner;
    if (rest.method === 'small steps') run.smallSteps = true;
    const sums = new Float64Array(run.whole.low.length);
    for (let i = 0; i < rest.forces.length; i++) {
      const f = at(rest.forces, i);
      widen(run, i, f, index);
      const whole = wholeOf[i] ?? -1;
      if (whole >= 0) sums[whole] = at(sums, whole) + f;
    }
    for (let e = 0; e < sums.length; e++)
      if (widen(run.whole, e, at(sums, e), index)) run.whole.forces[e] = rest.forces;
    run.heavy = rest.forces;
  }
}

function widen(
  to: Pick<CaseRun, 'low' | 'high' | 'worst'>,
  i: number,
  force: number,
  index: number,
): boolean {
  if (force < at(to.low, i)) to.low[i] = force;
  if (!(force > at(to.high, i))) return false;
  to.high[i] = force;
  to.worst[i] = index;
  return true;
}

import { type ScaledSystem, scaledLoad, scaledSystem } from '../resting/scaled-system.js';
import type { SupportPoint } from '../supports/support-points.js';
import {
  buildCornerSteps,
  type CornerLoads,
  changesNothing,
  noHints,
  type ReportCase,
  type StageOfPoints,
} from './build-corner.js';
import type { BuildingStage } from './building.js';
import { type CaseRun, emptyRun, record, worstPlaces } from './case-run.js';
import { noSigns, sign } from './case-signs.js';
import { type Component, type JointCorner, jointCorners } from './components.js';
import type { Loss } from './losses.js';
import { beforeWork, bodyAt, cornerPlace, type RangePlace } from './range-place.js';
import { type Budget, type TryPlace, tryRanges } from './try-ranges.js';

export interface StageRun {
  readonly asBuilt: CaseRun;
  readonly losses: readonly CaseRun[];
}

export interface RunOptions {
  /** Stiffness of a point, N/m; lets a second run vary it. */
  readonly stiffness: (point: SupportPoint) => number;
  /** Work out losses at every stage, or at the last alone. */
  readonly lossesAt: 'every stage' | 'last stage';
  /** How many places between the ends of the ranges are tried. */
  readonly budget: Budget;
}

/** Which points are there at a stage. */
export type Presence = (stage: BuildingStage, point: SupportPoint) => boolean;

/** A stage of a component: which of its points stand, what changed, and which points each loss takes. */
export interface StagePlan extends StageOfPoints {
  readonly there: readonly boolean[];
  readonly losses: readonly { readonly loss: Loss; readonly id: string; readonly hits: readonly number[] }[];
}

export interface Run {
  readonly corners: readonly JointCorner[];
  /** Every place of the ranges that was tried, the corners first. */
  readonly places: readonly RangePlace[];
  readonly stages: readonly StageRun[];
}

/** The elements that the crew put in, each with all of its contacts. */
export const wholes = ({ points }: Component): readonly string[] => [
  ...new Set(points.filter((p) => !p.original).map((p) => p.element)),
];

/**
 * Builds a component stage by stage at every corner of its ranges, and between corners where a load may be worse
 * there, and takes away one loss at a time. Stops after each place.
 */
export function* runStages(
  component: Component,
  stages: readonly StagePlan[],
  options: RunOptions,
): Generator<void, Run> {
  const { points, bodies } = component;
  const corners = jointCorners(bodies);
  const scaled = scaledComponent(component, corners.at(-1) ?? [], options);
  const elements = new Map(wholes(component).map((element, e) => [element, e]));
  const wholeOf = Int32Array.from(points, (p) => elements.get(p.element) ?? -1);
  const plan = stages.map((stage, s) =>
    options.lossesAt === 'every stage' || s === stages.length - 1 ? stage : { ...stage, losses: [] },
  );
  const runs = emptyRuns(plan, elements.size);
  const hints = noHints(plan);
  const tryPlace: TryPlace = function* (place, index, corner, wanted) {
    const signs = noSigns(plan);
    const loads = loadsAt(scaled, component, place);
    const told: ReportCase = (stage, loss, rest, _placedAt, through) => {
      sign(signs, stage, loss, rest, through);
      if (runs[stage] === runs[stage - 1]) return;
      const run = loss === undefined ? runs[stage]?.asBuilt : runs[stage]?.losses[loss];
      if (run !== undefined) record(run, rest, { corner, index }, wholeOf);
    };
    yield* buildCornerSteps(scaled, points, plan, loads, told, hints, wanted);
    return signs;
  };
  const places = yield* tryRanges(corners, bodies, tryPlace, () => worstPlaces(runs), options.budget);
  return { corners, places, stages: runs };
}

/** A stage that changes nothing that carries comes to what the one before it came to: it is the same run. */
function emptyRuns(plan: readonly StagePlan[], wholeCount: number): readonly StageRun[] {
  const runs: StageRun[] = [];
  for (const stage of plan) {
    const { there, losses } = stage;
    const before = runs.at(-1);
    runs.push(
      before !== undefined && changesNothing(stage) && before.losses.length === losses.length
        ? before
        : {
            asBuilt: emptyRun(there, wholeCount, undefined),
            losses: losses.map(({ loss }) => emptyRun(there, wholeCount, loss)),
          },
    );
  }
  return runs;
}

/** The bodies of a component at one place in the ranges. */
export const bodiesAt = ({ bodies }: Component, place: RangePlace) =>
  bodies.map((b, i) => ({ id: b.id, ...bodyAt(b.corners, place[i]) }));

/** The loads at a place: tool loads come on when all that is to hold them stands. */
export function loadsAt(scaled: ScaledSystem, component: Component, place: RangePlace): CornerLoads {
  const working = scaledLoad(scaled, bodiesAt(component, place));
  const off = beforeWork(place, component.bodies);
  return { working, building: off === place ? working : scaledLoad(scaled, bodiesAt(component, off)) };
}

export const scaledComponent = (
  component: Component,
  corner: JointCorner,
  { stiffness }: Pick<RunOptions, 'stiffness'>,
): ScaledSystem =>
  scaledSystem({
    bodies: bodiesAt(component, cornerPlace(corner, component.bodies)),
    springs: component.points.map((p) => ({
      id: p.id,
      upper: p.upper,
      lower: p.lower,
      x: p.at.x,
      y: p.at.y,
      stiffness: stiffness(p),
    })),
  });

/** Which points stand at each stage, and which of them each loss takes. */
export function stagesOfPoints(
  { points }: Component,
  stages: readonly BuildingStage[],
  losses: readonly Loss[],
  presence: Presence,
): readonly StagePlan[] {
  const mine = losses.flatMap((loss) => {
    const ids = new Set(loss.points);
    const hits = points.flatMap((p, i) => (ids.has(p.id) ? [i] : []));
    return hits.length > 0 ? [{ loss, id: loss.id, hits }] : [];
  });
  let before: readonly boolean[] = [];
  return stages.map((stage) => {
    const there = points.map((p) => presence(stage, p));
    const was = before;
    before = there;
    const changed = (to: boolean) =>
      there.flatMap((is, i) => (is === to && is !== (was[i] === true) ? [i] : []));
    return {
      there,
      added: changed(true),
      gone: changed(false),
      losses: mine.filter(({ hits }) => hits.some((i) => there[i] === true)),
    };
  });
}

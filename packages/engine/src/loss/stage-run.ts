import { type ScaledSystem, scaledLoad, scaledSystem } from '../resting/scaled-system.js';
import type { SupportPoint } from '../workings/support-points.js';
import { buildCorner, changesNothing, noHints, type StageOfPoints } from './build-corner.js';
import type { BuildingStage } from './building.js';
import { type CaseRun, emptyRun, record } from './case-run.js';
import { type Component, type JointCorner, jointCorners } from './components.js';
import type { Loss } from './losses.js';

export interface StageRun {
  readonly asBuilt: CaseRun;
  readonly losses: readonly CaseRun[];
}

export interface RunOptions {
  /** Stiffness of a point, N/m; lets a second run vary it. */
  readonly stiffness: (point: SupportPoint) => number;
  /** Work out losses at every stage, or at the last alone. */
  readonly lossesAt: 'every stage' | 'last stage';
}

/** Which points are there at a stage. */
export type Presence = (stage: BuildingStage, point: SupportPoint) => boolean;

/** A stage of a component: which of its points stand, what changed, and which points each loss takes. */
export interface StagePlan extends StageOfPoints {
  readonly there: readonly boolean[];
  readonly losses: readonly { readonly loss: Loss; readonly id: string; readonly hits: readonly number[] }[];
}

/** The elements that the crew put in, each with all of its contacts. */
export const wholes = ({ points }: Component): readonly string[] => [
  ...new Set(points.filter((p) => !p.original).map((p) => p.element)),
];

/**
 * Builds a component stage by stage at every corner of its ranges, and takes away one loss at a time. Stops after
 * each corner.
 */
export function* runStages(
  component: Component,
  stages: readonly StagePlan[],
  options: RunOptions,
): Generator<void, { readonly corners: readonly JointCorner[]; readonly stages: readonly StageRun[] }> {
  const { points } = component;
  const corners = jointCorners(component.bodies);
  const scaled = scaledComponent(component, corners.at(-1) ?? [], options);
  const elements = new Map(wholes(component).map((element, e) => [element, e]));
  const wholeOf = Int32Array.from(points, (p) => elements.get(p.element) ?? -1);
  const plan = stages.map((stage, s) =>
    options.lossesAt === 'every stage' || s === stages.length - 1 ? stage : { ...stage, losses: [] },
  );
  const runs: StageRun[] = [];
  for (const stage of plan) {
    const { there, losses } = stage;
    const before = runs.at(-1);
    // A stage that changes nothing that carries comes to what the one before it came to.
    const same = before !== undefined && changesNothing(stage) && before.losses.length === losses.length;
    runs.push(
      same
        ? before
        : {
            asBuilt: emptyRun(there, elements.size, undefined),
            losses: losses.map(({ loss }) => emptyRun(there, elements.size, loss)),
          },
    );
  }
  const hints = noHints(plan);
  for (const [index, corner] of corners.entries()) {
    buildCorner(
      scaled,
      points,
      plan,
      scaledLoad(scaled, bodiesAt(component, corner)),
      (stage, loss, rest) => {
        if (runs[stage] === runs[stage - 1]) return;
        const run = loss === undefined ? runs[stage]?.asBuilt : runs[stage]?.losses[loss];
        if (run !== undefined) record(run, rest, { corner, index }, wholeOf);
      },
      hints,
    );
    yield;
  }
  return { corners, stages: runs };
}

/** The bodies of a component at one corner of the ranges. */
export const bodiesAt = ({ bodies }: Component, corner: JointCorner) =>
  bodies.flatMap((b, i) => {
    const c = b.corners[corner[i] ?? 0];
    return c === undefined ? [] : [{ id: b.id, weight: c.weight, x: c.x, y: c.y }];
  });

export const scaledComponent = (
  component: Component,
  corner: JointCorner,
  { stiffness }: Pick<RunOptions, 'stiffness'>,
): ScaledSystem =>
  scaledSystem({
    bodies: bodiesAt(component, corner),
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

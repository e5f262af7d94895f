import { type ScaledSystem, scaledLoad, scaledSystem } from '../resting/scaled-system.js';
import type { SupportPoint } from '../workings/support-points.js';
import { buildCorner, type Hints } from './build-corner.js';
import type { BuildingStage } from './building.js';
import { type CaseRun, emptyRun, record } from './case-run.js';
import { type Component, type JointCorner, jointCorners } from './components.js';
import type { Loss } from './losses.js';

export interface StageRun {
  readonly asBuilt: CaseRun;
  readonly losses: readonly CaseRun[];
}

export interface RunOptions {
  /** Which points are there at a stage. */
  readonly presence: (stage: BuildingStage, point: SupportPoint) => boolean;
  /** Stiffness of a point, N/m; lets a second run vary it. */
  readonly stiffness: (point: SupportPoint) => number;
  /** Work out losses at every stage, or at the last alone. */
  readonly lossesAt: 'every stage' | 'last stage';
  /** Corners to work out, by index; left out, all. */
  readonly corners?: ReadonlySet<number>;
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
  stages: readonly BuildingStage[],
  losses: readonly Loss[],
  options: RunOptions,
): Generator<void, { readonly corners: readonly JointCorner[]; readonly stages: readonly StageRun[] }> {
  const { points } = component;
  const corners = jointCorners(component.bodies);
  const scaled = scaledComponent(component, corners.at(-1) ?? [], options);
  const elements = wholes(component);
  const wholeOf = points.map((p) => elements.indexOf(p.element));
  const plan = stagesOfPoints(component, stages, losses, options);
  const runs = plan.map(({ there, losses: lost }) => ({
    asBuilt: emptyRun(there, elements.length, undefined),
    losses: lost.map(({ loss }) => emptyRun(there, elements.length, loss)),
  }));
  const hints: Hints = new Map();
  for (const [index, corner] of corners.entries()) {
    if (options.corners?.has(index) === false) continue;
    buildCorner(
      scaled,
      points,
      plan,
      scaledLoad(scaled, bodiesAt(component, corner)),
      (stage, loss, rest) => {
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
    springs: component.points.map((p) => ({ ...p, x: p.at.x, y: p.at.y, stiffness: stiffness(p) })),
  });

/** Which points stand at each stage, and which of them each loss takes. */
export function stagesOfPoints(
  { points }: Component,
  stages: readonly BuildingStage[],
  losses: readonly Loss[],
  { presence, lossesAt }: Pick<RunOptions, 'presence' | 'lossesAt'>,
) {
  const mine = losses.flatMap((loss) => {
    const hits = points.flatMap((p, i) => (loss.points.includes(p.id) ? [i] : []));
    return hits.length > 0 ? [{ loss, id: loss.id, hits }] : [];
  });
  return stages.map((stage, s) => {
    const there = points.map((p) => presence(stage, p));
    const wanted = lossesAt === 'every stage' || s === stages.length - 1;
    return { there, losses: wanted ? mine.filter(({ hits }) => hits.some((i) => there[i] === true)) : [] };
  });
}

import { type Message, message, name } from '@cribwright/messages';
import type { Vehicle } from '@cribwright/model';
import { limitValue } from '@cribwright/model/internal';
import { originalSupports } from '../supports/original-supports.js';
import { placedSupports } from '../supports/placed-supports.js';
import { planBodies } from '../supports/plan-bodies.js';
import { strutStands } from '../supports/strut-points.js';
import type { SupportPoint } from '../supports/support-points.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { type BuildingStage, buildingStages } from './building.js';
import { type Component, components, type JointCorner } from './components.js';
import { type Loss, lossesOf } from './losses.js';
import type { RangePlace } from './range-place.js';
import { type Presence, runStages, type StageRun, stagesOfPoints } from './stage-run.js';
import { endsAlone, thorough } from './try-ranges.js';

/** What gives way more softly than this, N/m, holds nothing up. */
const softest = 1;

/** Everything worked out about how a plan rests, stage by stage and loss by loss. */
export interface LossWorking {
  readonly stages: readonly BuildingStage[];
  readonly parts: readonly ComponentRun[];
  /** What is there at a stage. */
  readonly presence: Presence;
  readonly losses: readonly Loss[];
  /** Their weight or place is not known: nothing is said about what carries them. */
  readonly unknown: readonly Vehicle[];
}

export interface ComponentRun {
  readonly component: Component;
  readonly corners: readonly JointCorner[];
  /** Every place of the ranges that was tried, the corners first. */
  readonly places: readonly RangePlace[];
  readonly stages: readonly StageRun[];
  /** The last stage again with other stiffnesses, each with the places that it tried. */
  readonly spread: readonly {
    readonly words: Message;
    readonly places: readonly RangePlace[];
    readonly last: StageRun;
  }[];
}

/** In steps: stops after each place tried in the ranges. */
export function* lossWorkingSteps(w: SupportWorkings): Generator<void, LossWorking> {
  const { bodies, unknown } = planBodies(w.plan, w.masses());
  const points = [...originalSupports(w.plan), ...placedSupports(w)].filter((p) => p.stiffness >= softest);
  const stages = buildingStages(w.plan);
  const losses = lossesOf(w.plan, points);
  const standing = new Map(stages.map((s) => [s, new Set(s.standing)]));
  const presence: Presence = (stage, point) =>
    point.original ||
    (point.kind === 'strut'
      ? strutStands(point, stage.standing, w)
      : standing.get(stage)?.has(point.element) === true);
  const parts: ComponentRun[] = [];
  const budget = w.options.endsAlone === true ? endsAlone : thorough;
  for (const component of components(bodies, points)) {
    const plan = stagesOfPoints(component, stages, losses, presence);
    const nominal = yield* runStages(component, plan, {
      stiffness: (p) => p.stiffness,
      lossesAt: 'every stage',
      budget,
    });
    const spread: ComponentRun['spread'][number][] = [];
    const factor = limitValue(w.plan.policy, 'stiffness spread')?.high ?? 1;
    for (const { words, stiffness } of variants(component, factor)) {
      const lossesAt = 'last stage';
      const again = yield* runStages(component, plan, { stiffness, lossesAt, budget });
      const last = again.stages.at(-1);
      if (last !== undefined) spread.push({ words, places: again.places, last });
    }
    const { corners, places, stages: runs } = nominal;
    parts.push({ component, corners, places, stages: runs, spread });
  }
  return { stages, parts, presence, losses, unknown };
}

/** Stiffnesses are known roughly. What the crew puts in, and a vehicle beneath, are made stiffer and softer. */
function variants({ points }: Component, factor: number) {
  if (!(factor > 1)) return [];
  const kinds = [
    { what: 'crew', is: (p: SupportPoint) => !p.original },
    { what: 'beneath', is: (p: SupportPoint) => p.kind === 'vehicle' },
  ] as const;
  const these = kinds.filter(({ is }) => points.some(is) && !points.every(is));
  const called = { factor: name(`${factor}`) };
  return these.flatMap(({ what, is }) =>
    [
      { words: message(`loss.${what}-stiffer`, called), by: factor },
      { words: message(`loss.${what}-softer`, called), by: 1 / factor },
    ].map(({ words: text, by }) => ({
      words: text,
      stiffness: (p: SupportPoint) => (is(p) ? p.stiffness * by : p.stiffness),
    })),
  );
}

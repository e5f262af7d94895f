import { buildingStages } from '../loss/building.js';
import { type Loss, lossesOf } from '../loss/losses.js';
import { planBodies } from '../supports/plan-bodies.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { governingCorners } from './corner-order.js';
import { standingGroups } from './groups.js';
import { looseVehicles } from './loose-coupling.js';
import { lossesInSpace } from './losses-in-space.js';
import { roseOf } from './rose-of.js';
import { emptyCase, type Finished, runCorner, type StageRecord } from './run-group.js';
import { sceneOf } from './scene-of.js';
import type { LeftOut, Standing, StandingGroup, VehiclePush } from './standing.js';
import type { Group } from './standing-scene.js';

/**
 * How much is worked out at most for a group of vehicles: the sum over load cases of the square of their unknowns.
 * Beyond it corners of the ranges are left out, and the result says how many.
 */
export const fullEffort = 2e7;

/** Works out how a plan stands. Stops after each load case and each push. */
export function* standingSteps(w: SupportWorkings, effort = fullEffort): Generator<void, Standing> {
  const { bodies } = planBodies(w.plan, w.masses());
  const loose = looseVehicles(w);
  const groups: StandingGroup[] = [];
  const leftOut: LeftOut[] = [];
  for (const group of standingGroups(w, bodies))
    groups.push(
      yield* runGroup(
        w,
        group,
        [...loose].filter((id) => group.bodies.some((b) => b.id === id)),
        effort,
        leftOut,
      ),
    );
  return { groups, leftOut };
}

function* runGroup(
  w: SupportWorkings,
  group: Group,
  loose: readonly string[],
  effort: number,
  leftOut: LeftOut[],
): Generator<void, StandingGroup> {
  const stages = buildingStages(w.plan);
  const all = [...lossesOf(w.plan, group.points), ...lossesInSpace(w, group)];
  const losses: readonly Loss[] = [...new Map(all.map((loss) => [loss.id, loss])).values()];
  // As found there is nothing yet that the plan could do about a loss.
  const records: readonly StageRecord[] = stages.map((stage, s) => ({
    stage,
    asBuilt: emptyCase(undefined),
    losses: s === 0 && stages.length > 1 ? [] : losses.map(emptyCase),
  }));
  const corners = governingCorners(group);
  const vehicles = [...new Set(group.bodies.map((b) => b.vehicle))];
  const size = unknownsOf(w, group) ** 2;
  const each = size * (stages.length + losses.length);
  const most = Math.max(2, Math.floor(effort / each));
  const done: Finished[] = [];
  // Losses of half-built stages: all at the heaviest, and then where what is lost carries more.
  for (const corner of corners.slice(0, most))
    done.push(yield* runCorner(w, group, corner, records, corner === corners[1]));
  if (corners.length > most) leftOut.push({ vehicles, done: most, of: corners.length });
  const pushes: VehiclePush[] = [];
  if (w.options.push === true)
    for (const body of group.bodies.filter((b) => b.id === b.vehicle)) {
      const rose = yield* roseOf(w, group, body, done);
      if (rose !== undefined) pushes.push(rose);
    }
  return { group, loose, stages: records, pushes };
}

const unknownsOf = (w: SupportWorkings, group: Group): number => {
  const { scene } = sceneOf(w, group, { corner: [], standing: [], tools: false, brakes: false });
  return 6 * scene.bodies.length + 3 * scene.feet.length;
};

import { buildingStages } from '../loss/building.js';
import { type Loss, lossesOf } from '../loss/losses.js';
import { limitValue, limitWord } from '../policy/limit.js';
import { type PlanBody, planBodies } from '../resting/plan-bodies.js';
import { lies } from '../vehicle/posed.js';
import { originalSupports } from '../workings/original-supports.js';
import type { SupportWorkings } from '../workings/support-workings.js';
import { cornersInOrder } from './corner-order.js';
import { footLosses } from './foot-losses.js';
import { isLooseCoupling, standingGroups } from './groups.js';
import { type PushPlan, pushAt } from './pushes.js';
import { emptyCase, type Finished, runCorner, type StageRecord } from './run-group.js';
import { sceneOf } from './scene-of.js';
import type { DirectionPush, LeftOut, Standing, StandingGroup, VehiclePush } from './standing.js';
import type { Group } from './standing-scene.js';

/**
 * How much is worked out at most for a group of vehicles: the sum over load cases, and over pushes, of the square of
 * their unknowns. Beyond it cases are left out, and the result says how many.
 */
export interface Effort {
  readonly cases: number;
  readonly pushes: number;
}
export const fullEffort: Effort = { cases: 4e7, pushes: 4e7 };

const directions = 24;

/** Works out how a plan stands. Stops after each load case and each push. */
export function* standingSteps(w: SupportWorkings, effort: Effort = fullEffort): Generator<void, Standing> {
  const { bodies } = planBodies(w.plan, w.masses());
  const loose = new Set(
    originalSupports(w.plan)
      .filter(isLooseCoupling)
      .map((p) => p.upper),
  );
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
  effort: Effort,
  leftOut: LeftOut[],
): Generator<void, StandingGroup> {
  const stages = buildingStages(w.plan);
  const losses: readonly Loss[] = [...lossesOf(w.plan, group.points), ...footLosses(w)];
  const records: readonly StageRecord[] = stages.map((stage) => ({
    stage,
    asBuilt: emptyCase(undefined),
    losses: losses.map(emptyCase),
  }));
  const corners = cornersInOrder(group);
  const vehicles = [...new Set(group.bodies.map((b) => b.vehicle))];
  const size = unknownsOf(w, group) ** 2;
  const each = size * stages.length * (1 + losses.length);
  const most = Math.max(2, Math.floor(effort.cases / each));
  const done: Finished[] = [];
  for (const corner of corners.slice(0, most)) done.push(yield* runCorner(w, group, corner, records));
  if (corners.length > most) leftOut.push({ kind: 'load cases', vehicles, done: most, of: corners.length });
  const pushes =
    w.options.push === true ? yield* runPushes(w, group, done, effort.pushes / size, leftOut) : [];
  return { group, loose, stages: records, pushes };
}

const unknownsOf = (w: SupportWorkings, group: Group): number => {
  const { scene } = sceneOf(w, group, { corner: [], standing: [], tools: false, brakes: false, useLimit: 1 });
  return 6 * scene.bodies.length + 3 * scene.feet.length;
};

/** Every vehicle from every side: at the lightest and the heaviest corner first, then at the others as far as it goes. */
function* runPushes(
  w: SupportWorkings,
  group: Group,
  done: readonly Finished[],
  affordable: number,
  leftOut: LeftOut[],
): Generator<void, readonly VehiclePush[]> {
  const standing = buildingStages(w.plan).at(-1)?.standing ?? [];
  const bodies = group.bodies.filter((b) => b.id === b.vehicle);
  const tools = w.plan.workingLoads.some((l) => group.bodies.some((b) => b.id === l.on))
    ? [false, true]
    : [false];
  const most = Math.max(1, Math.floor(affordable / (directions * Math.max(1, bodies.length) * tools.length)));
  const tried = done.slice(0, most);
  if (tried.length < done.length)
    leftOut.push({
      kind: 'pushes',
      vehicles: bodies.map((b) => b.vehicle),
      done: tried.length,
      of: done.length,
    });
  const pushes: VehiclePush[] = [];
  for (const body of bodies) {
    const height = pushHeight(w, body);
    const vehicle = w.vehicles.get(body.vehicle);
    const unknownGrip =
      vehicle !== undefined && lies(vehicle) && w.plan.ground.surface.frictionBody === undefined;
    if (height === undefined || unknownGrip) continue;
    let worst: readonly DirectionPush[] = [];
    for (const finished of tried)
      for (const on of tools) {
        const again: DirectionPush[] = [];
        const chosen = worst.length === 0 ? undefined : weakest(worst);
        for (let i = 0; i < directions; i++) {
          const before = worst[i];
          if (before !== undefined && chosen?.has(before) !== true) {
            again.push(before);
            continue;
          }
          const plan: PushPlan = { body, height, angle: (2 * Math.PI * i) / directions };
          const found = yield* pushAt(w, group, finished, standing, plan, on);
          again.push(before === undefined || isWorse(found, before) ? found : before);
          yield;
        }
        worst = again;
      }
    pushes.push({ vehicle: body.vehicle, body: body.id, height, directions: worst });
  }
  return pushes;
}

/** The third of the directions in which least was held so far: the others are not tried at further corners. */
const weakest = (pushes: readonly DirectionPush[]): ReadonlySet<DirectionPush> =>
  new Set([...pushes].sort((a, b) => shareOf(a) - shareOf(b)).slice(0, directions / 3));

const shareOf = ({ ends, push, weight }: DirectionPush): number => (ends === undefined ? -1 : push / weight);

/** No answer is worse than every answer. */
const isWorse = (a: DirectionPush, b: DirectionPush): boolean => shareOf(a) < shareOf(b) - 1e-9;

/** At the height that the policy sets; of a range the high end, which tips sooner. */
export function pushHeight(w: SupportWorkings, body: PlanBody): number | undefined {
  const word = limitWord(w.plan.policy, 'push height');
  if (word === 'cargo center') return body.centerHeight?.high;
  if (word === 'top of body') return w.vehicles.get(body.vehicle)?.height;
  return limitValue(w.plan.policy, 'push height')?.high;
}

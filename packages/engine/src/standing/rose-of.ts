import { lies, limitValue, limitWord } from '@cribwright/model/internal';
import { buildingStages } from '../loss/building.js';
import type { PlanBody } from '../supports/plan-bodies.js';
import type { SupportWorkings } from '../supports/support-workings.js';
import { pushAt, readyToPush } from './pushes.js';
import type { Finished } from './run-group.js';
import type { DirectionPush, VehiclePush } from './standing.js';
import type { Group } from './standing-scene.js';

const directions = 24;
/** So many of the directions in which least was held are tried at further corners. The linear program tries all. */
const weakest = 4;
/** Corners that are pushed at: lightest, heaviest, and the extremes of the pushed vehicle's own center. */
const mostCorners = 8;

/** Pushes one vehicle of the finished plan from every side. Nothing where its height or its grip is not known. */
export function* roseOf(
  w: SupportWorkings,
  group: Group,
  body: PlanBody,
  done: readonly Finished[],
): Generator<void, VehiclePush | undefined> {
  const height = pushHeight(w, body);
  const vehicle = w.vehicles.get(body.vehicle);
  const unknownGrip =
    vehicle !== undefined && lies(vehicle) && w.plan.ground.surface.frictionBody === undefined;
  if (height === undefined || unknownGrip) return undefined;
  const standing = buildingStages(w.plan).at(-1)?.standing ?? [];
  const hasTools = w.plan.toolLoads.some((l) => group.bodies.some((b) => b.id === l.on));
  let worst: readonly DirectionPush[] = [];
  for (const finished of extremes(group, body, done))
    for (const tools of hasTools ? [false, true] : [false]) {
      const ready = yield* readyToPush(w, group, finished, standing, tools);
      const chosen = worst.length === 0 ? undefined : leastHeld(worst);
      const found: DirectionPush[] = [];
      for (let i = 0; i < directions; i++) {
        const before = worst[i];
        if (before !== undefined && chosen?.has(before) !== true) {
          found.push(before);
          continue;
        }
        const angle = (2 * Math.PI * i) / directions;
        const now = yield* pushAt(group, ready, { corner: finished.corner, tools }, body, height, angle);
        found.push(before === undefined || isWorse(now, before) ? now : before);
        yield;
      }
      worst = found;
    }
  return { vehicle: body.vehicle, body: body.id, height, directions: worst };
}

/** The corners in the order given, those first in which no other has the pushed body's center farther out. */
function extremes(group: Group, body: PlanBody, done: readonly Finished[]): readonly Finished[] {
  const row = group.bodies.indexOf(body);
  const seen = new Set<number>();
  const first = done.filter(({ corner }) => {
    const own = corner[row] ?? 0;
    if (seen.has(own)) return false;
    seen.add(own);
    return true;
  });
  return [...new Set([...done.slice(0, 2), ...first])].slice(0, mostCorners);
}

const leastHeld = (pushes: readonly DirectionPush[]): ReadonlySet<DirectionPush> =>
  new Set([...pushes].sort((a, b) => shareOf(a) - shareOf(b)).slice(0, weakest));

const shareOf = ({ ends, push, weight }: DirectionPush): number => (ends === undefined ? -1 : push / weight);

/** No answer is worse than every answer. */
const isWorse = (a: DirectionPush, b: DirectionPush): boolean => shareOf(a) < shareOf(b) - 1e-9;

/** At the height that the policy sets; of a range the high end, which tips sooner. */
function pushHeight(w: SupportWorkings, body: PlanBody): number | undefined {
  const word = limitWord(w.plan.policy, 'push height');
  if (word === 'cargo center') return body.centerHeight?.high;
  if (word === 'top of body') return w.placed.vehicles.byId.get(body.vehicle)?.top?.high;
  return limitValue(w.plan.policy, 'push height')?.high;
}

import { term } from '@cribwright/messages';
import { type Plan, place, type SupportKind } from '@cribwright/model';
import { inch } from '@cribwright/units';
import type { Drag } from '../scene/scene.js';
import { remembered } from '../sharing/remembered.js';
import { cribSolids } from './crib-solids.js';
import { snapsFor } from './snaps.js';
import { chockSolids, padSolids, stepChockSolids, strutSolids, tieSolids } from './support-solids.js';
import type { Thing, ThingDrag } from './thing.js';
import { vehicleSolids } from './vehicle-solids.js';

/**
 * Everything in a plan as it stands in space, vehicles first, in the order of the text. What has not changed since
 * the last plan is the same object as then.
 */
export function thingsOf(plan: Plan): readonly Thing[] {
  const known = worked.get(plan);
  if (known !== undefined) return known;
  const things = workOut(plan);
  worked.set(plan, things);
  return things;
}

const worked = new WeakMap<Plan, readonly Thing[]>();
const thingOf = remembered<object, Thing>();

function workOut(plan: Plan): readonly Thing[] {
  // A support is drawn to the same places as the next one: they are worked out once.
  let snaps: Drag['snaps'] | undefined;
  const drag = (
    element: string,
    moves: Drag['moves'],
    from: { readonly x: number; readonly y: number },
  ): ThingDrag => {
    snaps ??= snapsFor(plan, undefined);
    return {
      element,
      moves,
      axes: ['x', 'y'],
      snaps: moves === 'vehicle' ? snapsFor(plan, element) : snaps,
      from: { x: from.x, y: from.y },
      grid: plan.display === 'us' ? inch / 2 : 0.01,
    };
  };
  const main = plan.vehicles[0]?.id;
  const placed = place(plan);
  const around = [plan.display, plan.policy, ...plan.vehicles, ...plan.pads];
  const supports = [...around, ...plan.cribs, ...plan.struts];
  // In this order they are drawn.
  const supportThings: Readonly<Record<SupportKind, () => readonly Thing[]>> = {
    pad: () => placed.pads.all.map((p) => thingOf(p.pad, supports, () => made(p.pad, 'pad', padSolids(p)))),
    chock: () =>
      plan.chocks.map((c, i) =>
        thingOf(c, around, () => made(c, 'chock', solidsOf(placed.chocks.all[i], chockSolids))),
      ),
    crib: () =>
      plan.cribs.map((c, i) =>
        thingOf(c, around, () =>
          made(c, 'crib', solidsOf(placed.cribs.all[i], cribSolids), drag(c.id, 'center', c.at)),
        ),
      ),
    'step chock': () =>
      plan.stepChocks.map((c, i) =>
        thingOf(c, around, () =>
          made(
            c,
            'step chock',
            solidsOf(placed.stepChocks.all[i], stepChockSolids),
            drag(c.id, 'center', c.at),
          ),
        ),
      ),
    strut: () =>
      plan.struts.map((s, i) =>
        thingOf(s, around, () =>
          made(s, 'strut', solidsOf(placed.struts.all[i], strutSolids), drag(s.id, 'base', s.foot)),
        ),
      ),
    tie: () =>
      plan.ties.map((t, i) =>
        thingOf(t, supports, () => made(t, 'tie', solidsOf(placed.ties.all[i], tieSolids))),
      ),
  };
  return [
    ...placed.vehicles.all
      .map((body) => ({ v: body.given, body }))
      .map(({ v, body }) =>
        thingOf(v, around, () => ({
          id: v.id,
          kind: 'vehicle',
          name: v.name,
          ref: { element: v.id },
          solids: vehicleSolids(body),
          drag:
            v.id === main
              ? { ...drag(v.id, 'vehicle', v.at), fixed: term('sheet.measured-from') }
              : drag(v.id, 'vehicle', v.at),
        })),
      ),
    ...Object.values(supportThings).flatMap((things) => things()),
  ];
}

/** What stands where, of an element of the plan as it was placed. */
const solidsOf = <P>(placed: P | undefined, solids: (p: P) => Thing['solids']): Thing['solids'] =>
  placed === undefined ? [] : solids(placed);

const made = (
  { id, name, ref }: Pick<Thing, 'id' | 'name' | 'ref'>,
  kind: Thing['kind'],
  solids: Thing['solids'],
  drag?: ThingDrag,
): Thing => ({ id, kind, name, ref, solids, ...(drag === undefined ? {} : { drag }) });

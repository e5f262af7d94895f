import type { Plan } from '@cribwright/engine';
import type { Drag } from '../scene/scene.js';
import { inch } from '../text/lengths.js';
import { cribSolids } from './crib-solids.js';
import { snapsFor } from './snaps.js';
import { chockSolids, padSolids, stepChockSolids, strutSolids, tieSolids } from './support-solids.js';
import type { Thing } from './thing.js';
import { vehicleSolids } from './vehicle-solids.js';

/**
 * Everything in a plan as it stands in space, vehicles first, in the order of the text. Worked out once for each
 * plan: another stage or view of the same plan draws the same things.
 */
export function thingsOf(plan: Plan): readonly Thing[] {
  const known = worked.get(plan);
  if (known !== undefined) return known;
  const things = workOut(plan);
  worked.set(plan, things);
  return things;
}

const worked = new WeakMap<Plan, readonly Thing[]>();

function workOut(plan: Plan): readonly Thing[] {
  // A support is drawn to the same places as the next one: they are worked out once.
  const snaps = snapsFor(plan, undefined);
  const drag = (
    element: string,
    moves: Drag['moves'],
    from: { readonly x: number; readonly y: number },
  ): Drag => ({
    element,
    moves,
    axes: ['x', 'y'],
    snaps: moves === 'vehicle' ? snapsFor(plan, element) : snaps,
    from: { x: from.x, y: from.y },
    grid: plan.display === 'us' ? inch / 2 : 0.01,
  });
  const main = plan.vehicles[0]?.id;
  return [
    ...plan.vehicles.map(
      (v): Thing => ({
        id: v.id,
        kind: 'vehicle',
        name: v.name,
        ref: { element: v.id },
        solids: vehicleSolids(v),
        drag:
          v.id === main
            ? { ...drag(v.id, 'vehicle', v.at), fixed: 'All places are measured from this vehicle.' }
            : drag(v.id, 'vehicle', v.at),
      }),
    ),
    ...plan.pads.map(
      (p): Thing => ({ id: p.id, kind: 'pad', name: p.name, ref: p.ref, solids: padSolids(p, plan) }),
    ),
    ...plan.chocks.map(
      (c): Thing => ({ id: c.id, kind: 'chock', name: c.name, ref: c.ref, solids: chockSolids(c, plan) }),
    ),
    ...plan.cribs.map(
      (c): Thing => ({
        id: c.id,
        kind: 'crib',
        name: c.name,
        ref: c.ref,
        solids: cribSolids(c, plan),
        drag: drag(c.id, 'centre', c.at),
      }),
    ),
    ...plan.stepChocks.map(
      (c): Thing => ({
        id: c.id,
        kind: 'step chock',
        name: c.name,
        ref: c.ref,
        solids: stepChockSolids(c),
        drag: drag(c.id, 'centre', c.at),
      }),
    ),
    ...plan.struts.map(
      (s): Thing => ({
        id: s.id,
        kind: 'strut',
        name: s.name,
        ref: s.ref,
        solids: strutSolids(s, plan),
        drag: drag(s.id, 'foot', s.foot),
      }),
    ),
    ...plan.ties.map(
      (t): Thing => ({ id: t.id, kind: 'tie', name: t.name, ref: t.ref, solids: tieSolids(t, plan) }),
    ),
  ];
}

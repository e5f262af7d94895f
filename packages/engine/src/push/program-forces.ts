import { at, indexAt } from '../resting/at.js';
import { times } from '../space/vectors.js';
import { addTo, armOf, columnBuilder, putOnBody, rowsOf } from './column-builder.js';
import type { Program } from './push-program.js';
import type { Push, PushSystem } from './push-system.js';

/** λ has room for one entry in each row of its body. */
export const pushEntries = 6;

/** Load and push anew: all that changes from one corner of the ranges to the next. */
export function withForces(p: Program, system: PushSystem, push: Push): Program {
  const { lp } = p;
  const fresh = {
    ...p,
    lp: {
      ...lp,
      rows: Int32Array.from(lp.rows),
      values: Float64Array.from(lp.values),
      right: Float64Array.from(lp.right),
    },
  };
  fillForces(fresh, system, push);
  return fresh;
}

/** Puts what gravity and the tool loads ask for on the right, and the push into the last column. */
export function fillForces(p: Program, system: PushSystem, push: Push): void {
  const { rows, values, right } = p.lp;
  right.fill(0, 0, p.rows);
  const forces = columnBuilder();
  for (const b of system.bodies)
    putOnBody(forces, rowsOf(p, b.id), armOf(p, b.center), times(system.gravity, b.weight / p.force), -1);
  for (const l of system.loads)
    putOnBody(forces, rowsOf(p, l.body), armOf(p, l.at), times(l.force, 1 / p.force), -1);
  addTo(right, forces);
  const pushed = columnBuilder();
  putOnBody(pushed, rowsOf(p, push.body), armOf(p, push.at), push.direction);
  const start = values.length - pushEntries - 1;
  for (let e = 0; e < pushEntries; e++) {
    rows[start + e] = e < pushed.entries ? indexAt(pushed.rows, e) : 0;
    values[start + e] = e < pushed.entries ? at(pushed.values, e) : 0;
  }
}

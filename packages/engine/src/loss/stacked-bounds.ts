import { provenBound } from '../linear-program/check-outcome.js';
import { limitRows } from '../linear-program/limit-rows.js';
import type { LinearProgram } from '../linear-program/linear-program.js';
import { simplex } from '../linear-program/simplex.js';
import type { SimplexState } from '../linear-program/simplex-state.js';
import { at, indexAt } from '../resting/at.js';
import { scaledLoad } from '../resting/scaled-system.js';
import type { SupportPoint } from '../supports/support-points.js';
import type { Component } from './components.js';
import { scaledComponent } from './stage-run.js';

/**
 * The most that each point of a component can carry, N, whatever the stiffnesses, where bodies rest on bodies: the
 * greatest of one force over all that only push and balance every body, each anywhere within its ranges. A linear
 * program for each point that is wanted; only answers with their proof are given.
 */
export function stackedBounds(
  component: Component,
  wanted: (point: SupportPoint) => boolean = () => true,
): ReadonlyMap<string, number> {
  const { bodies, points } = component;
  if (!points.some(wanted)) return new Map();
  const scaled = scaledComponent(
    component,
    bodies.map((b) => b.corners.length - 1),
    { stiffness: (p) => p.stiffness },
  );
  const columns: [row: number, value: number][][] = points.map((_, i) =>
    [0, 1].flatMap((side) => {
      const body = indexAt(side === 0 ? scaled.upper : scaled.lower, i);
      return body < 0
        ? []
        : [0, 1, 2].map((a): [number, number] => [
            3 * body + a,
            (side === 0 ? 1 : -1) * at(scaled.levers, 6 * i + 3 * side + a),
          ]);
    }),
  );
  bodies.forEach((body, b) => {
    for (const corner of body.corners) {
      const alone = bodies.map((o, i) => (i === b ? corner : { ...o, weight: 0, x: 0, y: 0 }));
      const load = scaledLoad(scaled, alone);
      columns.push([
        ...[0, 1, 2].map((a): [number, number] => [3 * b + a, -at(load, 3 * b + a)]),
        [3 * bodies.length + b, 1],
      ]);
    }
  });
  const entries = columns.flat();
  let end = 0;
  const shared = {
    equalities: 4 * bodies.length,
    count: columns.length,
    starts: Int32Array.from([0, ...columns.map((c) => (end += c.length))]),
    rows: Int32Array.from(entries, ([row]) => row),
    values: Float64Array.from(entries, ([, value]) => value),
    right: Float64Array.from({ length: 4 * bodies.length }, (_, r) => (r < 3 * bodies.length ? 0 : 1)),
  };
  const limits = limitRows({ ...shared, objective: 0 });
  const bounds = new Map<string, number>();
  let state: SimplexState | undefined;
  points.forEach((p, objective) => {
    if (!wanted(p)) return;
    const lp = { ...shared, objective, limits };
    // Only what is wanted most of changes: what balanced for the point before balances for this one.
    const found = (state && proven(lp, state)) ?? proven(lp);
    if (found !== undefined) bounds.set(p.id, Math.max(0, found.bound) * scaled.force);
    state = found?.state;
  });
  return bounds;
}

/** The greatest of the objective, with its proof; `undefined` where there is none. */
function proven(lp: LinearProgram, from?: SimplexState) {
  const found = simplex(lp, from);
  const bound = found.kind === 'optimal' ? provenBound(lp, found.duals) : undefined;
  return bound === undefined || found.kind !== 'optimal' ? undefined : { bound, state: found.state };
}

import type { PlanBody } from '../supports/plan-bodies.js';
import type { SupportPoint } from '../supports/support-points.js';

/** Bodies that hang together through their supports, and those supports. */
export interface Component {
  readonly bodies: readonly PlanBody[];
  readonly points: readonly SupportPoint[];
}

/** Splits a plan into what can be worked out by itself. Points on bodies that are not known are left out. */
export function components(
  bodies: readonly PlanBody[],
  points: readonly SupportPoint[],
): readonly Component[] {
  const group = new Map(bodies.map((b) => [b.id, b.id]));
  const rootOf = (id: string): string => {
    const next = group.get(id);
    return next === undefined || next === id ? id : rootOf(next);
  };
  const known = points.filter((p) => group.has(p.upper) && (p.lower === 'ground' || group.has(p.lower)));
  for (const p of known) if (p.lower !== 'ground') group.set(rootOf(p.lower), rootOf(p.upper));
  const roots = [...new Set(bodies.map((b) => rootOf(b.id)))];
  return roots.map((root) => ({
    bodies: bodies.filter((b) => rootOf(b.id) === root),
    points: known.filter((p) => rootOf(p.upper) === root),
  }));
}

/** One corner of all ranges of a component together: for each body, which of its corners. */
export type JointCorner = readonly number[];

const most = 256;

/** The vehicles of a component, and how many corners the ranges of each have; a cab goes with its vehicle. */
function cornerCounts(bodies: readonly PlanBody[]) {
  const vehicles = [...new Set(bodies.map((b) => b.vehicle))];
  const counts = vehicles.map((v) => bodies.find((b) => b.vehicle === v)?.corners.length ?? 1);
  return { vehicles, counts, mixes: counts.reduce((product, n) => product * n, 1) };
}

/** Whether every mix of the vehicles' corners is worked out. */
export const everyMix = (bodies: readonly PlanBody[]): boolean => cornerCounts(bodies).mixes <= most;

/**
 * Every mix of the vehicles' corners. Where these are very many, each vehicle runs over its own corners while the
 * others stand at their first, and at their last (lightest and heaviest): then a rule says that not all were tried.
 */
export function jointCorners(bodies: readonly PlanBody[]): readonly JointCorner[] {
  const { vehicles, counts, mixes } = cornerCounts(bodies);
  const spread = (choice: readonly number[]): JointCorner =>
    bodies.map((b) => choice[vehicles.indexOf(b.vehicle)] ?? 0);
  if (mixes <= most)
    return counts
      .reduce<readonly (readonly number[])[]>(
        (all, n) => all.flatMap((c) => Array.from({ length: n }, (_, i) => [...c, i])),
        [[]],
      )
      .map(spread);
  const lists = counts.flatMap((n, vehicle) =>
    Array.from({ length: n }, (_, i) =>
      [0, 1].map((end) => counts.map((m, v) => (v === vehicle ? i : end === 0 ? 0 : m - 1))),
    ).flat(),
  );
  return [...new Map(lists.map((l) => [l.join(), l])).values()].map(spread);
}

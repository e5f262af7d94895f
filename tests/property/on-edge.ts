import type { Analysis } from '@cribwright/engine';
import { type Plan, toPlan } from '@cribwright/model';
import { casesOf } from './faults.js';

/**
 * Whether a center of gravity lies, to a hair, on the line through two places of support: two wheels on their diagonal,
 * or a lone axle. Whether the body rests there is decided by the last digit of a sum, and so by what the weight is.
 */
export function onEdge(plan: Plan, analysis: Analysis): boolean {
  const reactions = analysis.stages.flatMap((s) => casesOf(s).flatMap((c) => c.reactions));
  return analysis.bodies.some(({ vehicle: id, center }) => {
    const vehicle = plan.vehicles.find((v) => v.id === id);
    const [x, y] = [center.x.value, center.y.value];
    if (vehicle === undefined || x === undefined || y === undefined) return false;
    const places = [
      ...vehicle.axles.flatMap((a) => [-1, 1].map((s) => toPlan(vehicle, { x: a.x, y: (s * a.track) / 2 }))),
      ...reactions.filter((r) => r.upper === id || r.lower === id).map((r) => r.at),
    ];
    const centers = [x.low, x.high].flatMap((cx) =>
      [y.low, y.high].map((cy) => toPlan(vehicle, { x: cx, y: cy })),
    );
    return places.some((a, i) =>
      places
        .slice(i + 1)
        .some((b) => centers.some((c) => Math.abs(turn(a, b, c)) < 1e-6 * Math.hypot(b.x - a.x, b.y - a.y))),
    );
  });
}

type Place = { readonly x: number; readonly y: number };
const turn = (a: Place, b: Place, c: Place): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

import assert from 'node:assert/strict';
import { type Analysis, type Figure, type Plan, toPlan } from '@cribwright/engine';
import { casesOf } from './faults.js';

/**
 * Every number of an analysis that a margin is taken from, the worst end of it, so that more is worse: loads, uses of
 * capacity, what statics allows at most, crushing and pressure, the pad that would do, gaps; capacities and limits
 * with their sign turned.
 */
export function burdensOf(analysis: Analysis): ReadonlyMap<string, number> {
  const all = new Map<string, number>();
  const put = (id: string, figure: Figure | undefined, worse: 'more' | 'less' = 'more') => {
    const value = figure?.value;
    if (value !== undefined) all.set(id, worse === 'more' ? value.high : -value.low);
  };
  for (const { id, figures, contacts } of analysis.supports) {
    for (const key of ['load', 'use', 'asBuilt', 'bound', 'crushing', 'pressure', 'gap', 'height'])
      put(`${id} ${key}`, figures[key]);
    for (const key of ['capacity', 'heightLimit', 'overhang']) put(`${id} ${key}`, figures[key], 'less');
    for (const c of contacts) {
      put(`${id}#${c.number} load`, c.load);
      put(`${id}#${c.number} as built`, c.asBuilt);
      put(`${id}#${c.number} bound`, c.bound);
      put(`${id}#${c.number} use`, c.use);
      put(`${id}#${c.number} capacity`, c.capacity, 'less');
    }
  }
  for (const g of analysis.ground) {
    put(`ground under ${g.element} load`, g.load);
    put(`ground under ${g.element} pressure`, g.pressure);
    put(`ground under ${g.element} pad`, g.padNeeded);
    put(`ground under ${g.element} allowable`, g.allowable, 'less');
  }
  for (const stage of analysis.stages)
    for (const one of casesOf(stage))
      for (const r of one.reactions) all.set(`${stage.id}, ${one.id}: ${r.id}`, r.load.high);
  return all;
}

/** What is unsafe, of what is about strength and standing. What could not be checked is no margin. */
export const alarmsOf = (analysis: Analysis): readonly string[] =>
  analysis.findings
    .filter((f) => f.couldNotRun !== true && standing.has(f.rule))
    .filter((f) => f.severity === 'danger' || f.rule === 'loss-of-support')
    .map((f) => `${f.rule} on ${f.subject.element}`);

const standing: ReadonlySet<string> = new Set([
  'crib-load',
  'crib-eccentric',
  'crib-height',
  'crib-reach',
  'ground-bearing',
  'loss-of-support',
  'strut-load',
  'strut-slip',
  'tie-load',
  'tipping',
  'unsupported-end',
  'stage-unsafe',
  'grade-slide',
]);

/**
 * Whether a centre of gravity lies, to a hair, on the line through two places of support: two wheels on their diagonal,
 * or a lone axle. Whether the body rests there is decided by the last digit of a sum, and so by what the weight is.
 */
export function onEdge(plan: Plan, analysis: Analysis): boolean {
  const reactions = analysis.stages.flatMap((s) => casesOf(s).flatMap((c) => c.reactions));
  return analysis.bodies.some(({ vehicle: id, centre }) => {
    const vehicle = plan.vehicles.find((v) => v.id === id);
    const [x, y] = [centre.x.value, centre.y.value];
    if (vehicle === undefined || x === undefined || y === undefined) return false;
    const places = [
      ...vehicle.axles.flatMap((a) => [-1, 1].map((s) => toPlan(vehicle, { x: a.x, y: (s * a.track) / 2 }))),
      ...reactions.filter((r) => r.upper === id || r.lower === id).map((r) => r.at),
    ];
    const centres = [x.low, x.high].flatMap((cx) =>
      [y.low, y.high].map((cy) => toPlan(vehicle, { x: cx, y: cy })),
    );
    return places.some((a, i) =>
      places
        .slice(i + 1)
        .some((b) => centres.some((c) => Math.abs(turn(a, b, c)) < 1e-6 * Math.hypot(b.x - a.x, b.y - a.y))),
    );
  });
}

type Place = { readonly x: number; readonly y: number };
const turn = (a: Place, b: Place, c: Place): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Throws where more weight made anything easier. Returns how many numbers above nothing were compared. */
export function assertNoEasier(light: Analysis, heavy: Analysis): number {
  const [calm, now] = [alarmsOf(light), new Set(alarmsOf(heavy))];
  for (const alarm of calm) assert.ok(now.has(alarm), `no longer said: ${alarm}`);
  const after = burdensOf(heavy);
  const dust = 1e-9 * heavy.bodies.reduce((sum, b) => sum + (b.weight.value?.high ?? 0), 0);
  let compared = 0;
  for (const [id, before] of burdensOf(light)) {
    if (before > dust) compared++;
    const then = after.get(id) ?? Number.NaN;
    assert.ok(then >= before - 1e-6 * Math.abs(before) - dust, `${id}: ${before} to ${then}`);
  }
  return compared;
}

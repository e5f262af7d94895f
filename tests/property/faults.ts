import type { Analysis, LoadCase } from '@cribwright/engine';
import type { Plan } from '@cribwright/model';

/** Paths to every number that is not finite, and to what JSON would lose. A part met again is not walked again. */
function unsound(value: unknown, path = '', met = new WeakSet<object>()): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`];
  if (typeof value === 'string')
    return /NaN|undefined|Infinity|\[object/.test(value) ? [`${path}: ${value}`] : [];
  if (typeof value === 'function') return [`${path}: function`];
  if (value === null || typeof value !== 'object' || met.has(value)) return [];
  met.add(value);
  return Object.entries(value).flatMap(([key, part]) => unsound(part, `${path}/${key}`, met));
}

/** As built, and with each support lost. */
export const casesOf = (stage: Analysis['stages'][number]): readonly LoadCase[] => [
  stage.asBuilt,
  ...stage.losses,
];

/** What is wrong with an analysis, whatever the plan: a rule that broke, a number that is none, a contact that pulls. */
export function faults(plan: Plan, analysis: Analysis): readonly string[] {
  const crashed = analysis.findings
    .filter((f) => f.message.id === 'rule.could-not-run')
    .map((f) => `${f.rule} could not run`);
  const figures = analysis.supports.flatMap((s) =>
    Object.values(s.figures)
      .filter((f) => f.value !== undefined && f.value.low > f.value.high)
      .map((f) => `${s.id} ${f.key} is upside down`),
  );
  const reactions = analysis.stages
    .flatMap(casesOf)
    .flatMap((c) => c.reactions)
    .filter((r) => !(r.load.low >= 0 && r.load.low <= r.load.high))
    .map((r) => `${r.id} pulls, or is upside down`);
  const bodies = analysis.bodies.length === plan.vehicles.length ? [] : ['a vehicle is missing'];
  return [...unsound(analysis), ...crashed, ...figures, ...reactions, ...bodies];
}

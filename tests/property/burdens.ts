import assert from 'node:assert/strict';
import type { Analysis } from '@cribwright/engine';
import type { Figure } from '@cribwright/messages';
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

/** Rules that say so where the loads of a case could not be worked out. */
const loadRules = new Set(['loss-of-support', 'unsupported-end', 'stage-unsafe']);

/**
 * Throws where more weight made anything easier. Returns how many numbers above nothing were compared.
 *
 * @param slack a share of each number: what a search in ranges may come short by.
 */
export function assertNoEasier(light: Analysis, heavy: Analysis, slack = 1e-6): number {
  const [calm, now] = [alarmsOf(light), new Set(alarmsOf(heavy))];
  for (const alarm of calm) assert.ok(now.has(alarm), `no longer said: ${alarm}`);
  const after = burdensOf(heavy);
  const dust = 1e-9 * heavy.bodies.reduce((sum, b) => sum + (b.weight.value?.high ?? 0), 0);
  const unsolved = heavy.findings.some((f) => f.couldNotRun === true && loadRules.has(f.rule));
  let compared = 0;
  for (const [id, before] of burdensOf(light)) {
    if (before > dust) compared++;
    const then = after.get(id) ?? Number.NaN;
    // A case that could not be solved raises no margin, as long as the analysis says loudly that it did not pass.
    if (Number.isNaN(then) && unsolved) continue;
    assert.ok(then >= before - slack * Math.abs(before) - dust, `${id}: ${before} to ${then}`);
  }
  return compared;
}

import { readdirSync } from 'node:fs';
import { type CheckReport, surprises } from '@cribwright/cli';
import { drawScene, svgOf, viewsOf } from '@cribwright/drawing';
import { caution } from '@cribwright/engine';
import { english } from '@cribwright/messages/testing';
import { beforeAll, describe, expect, it } from 'vitest';
import { readPlans, root } from './read-plans.js';

const files = readdirSync(`${root}examples`, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.crib') && !name.startsWith('out'))
  .map((name) => `examples/${name}`)
  .sort();

let report: CheckReport = { files: [], unreadable: [] };
beforeAll(async () => {
  report = await readPlans();
});

const inFile = (path: string) => report.files.filter((f) => f.path === path);
const plansOf = (path: string) => inFile(path).flatMap((f) => f.plans);

it('reads every example', () => {
  expect(report.unreadable).toEqual([]);
  expect(report.files.map((f) => f.path)).toEqual(files);
  expect(report.files.flatMap((f) => f.plans).length).toBeGreaterThanOrEqual(8);
});

describe.each(files)('%s', (path) => {
  it('is written without a mistake', () => {
    const problems = inFile(path).flatMap((f) => f.problems.map((p) => english(p.message)));
    expect(problems).toEqual([]);
  });

  it('comes out as its expect lines say, with no danger that they do not name', () => {
    for (const plan of plansOf(path)) {
      expect(plan.reply.partial).toBe(false);
      expect(plan.reply.analysis.expectations.filter((e) => !e.held)).toEqual([]);
      expect(
        surprises(plan).map((s) => `${s.finding.rule} on ${s.subject}: ${english(s.finding.message)}`),
      ).toEqual([]);
      expect(plan.reply.plan.expectations.length).toBeGreaterThan(0);
    }
  });

  it('has every check run', () => {
    const silent = plansOf(path).flatMap((p) => p.findings.filter((f) => f.finding.couldNotRun));
    expect(silent.map((f) => english(f.finding.message))).toEqual([]);
  });

  it('is a picture in every view, with the caution on it', () => {
    for (const { reply } of plansOf(path)) {
      const { plan, analysis } = reply;
      for (const view of viewsOf(plan, analysis)) {
        const scene = drawScene(plan, analysis, {
          view: view.id,
          subject: undefined,
          stage: undefined,
          lost: undefined,
        });
        expect(scene.title).not.toBe('No drawing');
        expect(scene.words).toContain(plan.title);
        expect(scene.caution).toBe(caution);
        expect(svgOf(scene)).not.toMatch(/NaN|undefined|Infinity/);
      }
    }
  });
});

it('has a faulty copy of each of the first three, found out in full', () => {
  for (const name of ['trailer-on-car', 'truck-on-car', 'air-sprung-cab']) {
    const [good] = plansOf(`examples/plans/${name}.crib`);
    const [faulty] = plansOf(`examples/plans/${name}-faulty.crib`);
    expect(good?.findings.filter((f) => f.finding.severity === 'danger')).toEqual([]);
    expect(good?.reply.plan.expectations.map((e) => e.kind)).toContain('safe');
    const dangers = faulty?.findings.filter((f) => f.finding.severity === 'danger') ?? [];
    expect(dangers.length).toBeGreaterThan(1);
  }
});

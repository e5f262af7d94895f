import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { surprises } from '@cribwright/cli';
import { caution } from '@cribwright/engine';
import { english } from '@cribwright/messages/testing';
import { expect, it } from 'vitest';
import { readPlans, root } from './read-plans.js';

const readme = readFileSync(`${root}README.md`, 'utf8');

it('carries the caution as every sheet does', () => {
  expect(readme).toContain(caution);
});

it('shows plans that hold', async () => {
  const fences = [...readme.matchAll(/```crib\n([\s\S]*?)```/g)].map((m) => m[1] ?? '');
  expect(fences.length).toBeGreaterThan(0);
  for (const text of fences) {
    const report = await readPlans(['-'], text);
    const [file] = report.files;
    expect(file?.problems.map((p) => english(p.message))).toEqual([]);
    expect(file?.plans.length).toBe(1);
    for (const plan of file?.plans ?? []) {
      expect(plan.reply.analysis.expectations.map((e) => [english(e.text), e.held])).toEqual([
        ['nothing unsafe', true],
      ]);
      expect(surprises(plan)).toEqual([]);
    }
  }
});

it('links only to what is there', () => {
  const links = [...readme.matchAll(/\]\(([^)#:]+)\)/g)].map((m) => m[1] ?? '');
  expect(links.length).toBeGreaterThan(4);
  expect(links.filter((link) => !existsSync(`${root}${link}`))).toEqual([]);
});

it('lists every example beside the examples', () => {
  const index = readFileSync(`${root}examples/README.md`, 'utf8');
  const listed = [...index.matchAll(/\]\(([^)]+\.crib)\)/g)].map((m) => m[1] ?? '');
  const there = readdirSync(`${root}examples`, { recursive: true, encoding: 'utf8' }).filter((f) =>
    f.endsWith('.crib'),
  );
  expect(listed.sort()).toEqual(there.sort());
  expect(index).toContain(caution);
});

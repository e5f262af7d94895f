import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { viewsOf } from '@cribwright/drawing';
import { trailerOnCar } from '@cribwright/model/testing';
import { analyze } from '@cribwright/rules';
import { expect, it } from 'vitest';

it('lists every view of the folder, as the generator writes it', () => {
  const script = fileURLToPath(new URL('../packages/drawing/build/view-index.mjs', import.meta.url));
  expect(execFileSync(process.execPath, [script, '--check'], { encoding: 'utf8' })).toBe('');
});

it('gives each view its own name and place among the tabs', () => {
  const views = viewsOf(trailerOnCar, analyze(trailerOnCar, { push: true }));
  expect(views.length).toBe(11);
  for (const part of ['id', 'name', 'order'] as const)
    expect(new Set(views.map((v) => v[part])).size).toBe(views.length);
  expect(views.map((v) => v.order)).toEqual([...views.map((v) => v.order)].sort((a, b) => a - b));
});

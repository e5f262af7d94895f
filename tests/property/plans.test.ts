import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { analyze } from '@cribwright/rules';
import { describe, expect, it } from 'vitest';
import { oddPlans } from './any-plan.js';
import { faults } from './faults.js';
import { properties } from './properties.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const runner = fileURLToPath(new URL('run.ts', import.meta.url));
/** ms; a thousand plans take a while on a busy machine. */
const patience = 1_200_000;

describe('random plans', () => {
  it.each(Object.keys(properties))(
    '%s',
    async (name) => {
      const { stdout } = await promisify(execFile)(
        process.execPath,
        ['--conditions=source', '--import', 'tsx', runner, name],
        { cwd: root, maxBuffer: 1e8 },
      );
      expect(stdout).toMatch(/^holds: \d+ /);
    },
    patience,
  );
});

describe('plans at the edge of sense', () => {
  it.each(Object.entries(oddPlans))('%s', (_, plan) => {
    expect(faults(plan, analyze(plan, { push: true }))).toEqual([]);
  });
});

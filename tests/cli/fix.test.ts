import { cpSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { bundled } from '../bundled.js';
import { root, runCommand } from './command.js';

let command = '';
beforeAll(async () => {
  command = await bundled('cli');
});

const faulty = 'plans/air-sprung-cab-faulty.crib';

function examples() {
  const cwd = mkdtempSync(join(tmpdir(), 'cribwright-fix-'));
  cpSync(join(root, 'examples'), cwd, { recursive: true });
  return {
    text: () => readFileSync(join(cwd, faulty), 'utf8'),
    run: (...args: string[]) => runCommand(command, args, { cwd }),
  };
}

describe('fix', () => {
  it('writes nothing with --dry-run, and shows each step and each changed line', () => {
    const { text, run } = examples();
    const before = text();
    const { code, out } = run('fix', '--dry-run', faulty);
    expect(text()).toBe(before);
    expect(code).toBe(0);
    expect(out).toContain('1. Use 5 courses');
    expect(out).toMatch(/^ - .*courses/m);
    expect(out).toMatch(/^ \+ .*courses +5/m);
    expect(out).toContain('Read the plan again before you rely on it.');
  });

  it('writes a plan in which nothing is unsafe but the expect lines that named its faults', () => {
    const { run } = examples();
    expect(run('fix', faulty).code).toBe(0);
    const after = JSON.parse(run('check', faulty, '-f', 'json').out) as {
      files: { plans: { findings: { rule: string; severity: string; couldNotRun: boolean }[] }[] }[];
    };
    const unsafe = after.files
      .flatMap((f) => f.plans.flatMap((p) => p.findings))
      .filter((f) => f.severity === 'danger' || f.couldNotRun);
    expect(unsafe.length).toBeGreaterThan(0);
    expect(new Set(unsafe.map((f) => f.rule))).toEqual(new Set(['expectation-unmet']));
    expect(run('fix', faulty, '-l', 'es').out).toContain('No se encontró nada inseguro.');
  });

  it('ends with 2 for a file that is not there', () => {
    const { run } = examples();
    const { code, err } = run('fix', 'gone.crib');
    expect(code).toBe(2);
    expect(err).toContain('gone.crib');
  });
});

import { cpSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { bundled } from '../bundled.js';
import { root, runCommand, runHere } from './command.js';

let command = '';
beforeAll(async () => {
  command = await bundled('cli');
});

const faulty = 'plans/air-sprung-cab-faulty.crib';

function examples() {
  const cwd = mkdtempSync(join(tmpdir(), 'cribwright-fix-'));
  cpSync(join(root, 'examples'), cwd, { recursive: true });
  return {
    cwd,
    text: () => readFileSync(join(cwd, faulty), 'utf8'),
    run: (...args: string[]) => runHere(args, { cwd }),
  };
}

describe('fix', () => {
  it('writes nothing with --dry-run, and shows each step and each changed line', async () => {
    const { text, run } = examples();
    const before = text();
    const { code, out } = await run('fix', '--dry-run', faulty);
    expect(text()).toBe(before);
    expect(code).toBe(0);
    expect(out).toContain('1. Use 5 courses');
    expect(out).toMatch(/^ - .*courses/m);
    expect(out).toMatch(/^ \+ .*courses +5/m);
    expect(out).toContain('Read the plan again before you rely on it.');
  });

  it('writes a plan in which nothing is unsafe but the expect lines that named its faults', async () => {
    const { run } = examples();
    expect((await run('fix', faulty)).code).toBe(0);
    const after = JSON.parse((await run('check', faulty, '-f', 'json')).out) as {
      files: { plans: { findings: { rule: string; severity: string; couldNotRun: boolean }[] }[] }[];
    };
    const unsafe = after.files
      .flatMap((f) => f.plans.flatMap((p) => p.findings))
      .filter((f) => f.severity === 'danger' || f.couldNotRun);
    expect(unsafe.length).toBeGreaterThan(0);
    expect(new Set(unsafe.map((f) => f.rule))).toEqual(new Set(['expectation-unmet']));
    expect((await run('fix', faulty, '-l', 'es')).out).toContain('No se encontró nada inseguro.');
  });

  it('ends with 2 for a file that is not there', async () => {
    const { cwd, run } = examples();
    const ended = await run('fix', 'gone.crib');
    expect(runCommand(command, ['fix', 'gone.crib'], { cwd })).toEqual(ended);
    const { code, err } = ended;
    expect(code).toBe(2);
    expect(err).toContain('gone.crib');
  });
});

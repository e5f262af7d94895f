import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { judge } from './check.js';
import { cite } from './sources.js';
import { subjects } from './subjects.js';

describe.each(subjects)('$subject', ({ checks }) => {
  it.each(checks.map((check) => [check.what, check] as const))('%s', async (_, check) => {
    const verdict = await judge(check);
    expect(
      Math.abs(verdict.difference),
      `${cite(check.source)}: expected ${check.expected} ${check.unit}, computed ${verdict.computed}`,
    ).toBeLessThanOrEqual(check.within);
  });
});

describe('the table', () => {
  const all = subjects.flatMap((s) => s.checks);
  it('holds over a hundred checks', () => expect(all.length).toBeGreaterThan(100));
  it('says each thing once within its subject', () => {
    for (const { checks } of subjects) {
      const said = checks.map((c) => `${c.what} ${c.unit} ${cite(c.source)}`);
      expect(new Set(said).size).toBe(said.length);
    }
  });
  it('leaves no file of checks out', () => {
    const files = readdirSync(new URL('.', import.meta.url)).filter((f) => f.endsWith('.checks.ts'));
    expect(files.length).toBe(subjects.length);
  });
  it('fails a check whose number is off or missing', async () => {
    const right = {
      what: 'x',
      source: { kind: 'closed form', derivation: '1' },
      expected: 1,
      within: 0,
      unit: '',
    } as const;
    expect((await judge({ ...right, computed: () => 1 })).holds).toBe(true);
    expect((await judge({ ...right, computed: () => 1.0001 })).holds).toBe(false);
    expect((await judge({ ...right, computed: () => Number.NaN })).holds).toBe(false);
    expect(
      (
        await judge({
          ...right,
          computed: () => {
            throw new Error('on purpose');
          },
        })
      ).holds,
    ).toBe(false);
  });
});

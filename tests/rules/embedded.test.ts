import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const isUpToDate = (script: string) =>
  expect(() =>
    execFileSync(process.execPath, ['--conditions=source', '--import', 'tsx', script, '--check'], {
      cwd: root,
      stdio: 'pipe',
    }),
  ).not.toThrow();

it('holds the library and the rule pages as they are on disk', () => {
  isUpToDate('packages/language/build/embed.mjs');
  isUpToDate('packages/rules/build/embed-pages.mjs');
});

it('lists every rule in the reference', () => {
  isUpToDate('packages/rules/build/rule-reference.mjs');
});

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { cruise, type ICruiseOptions, type ICruiseResult } from 'dependency-cruiser';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const { options, forbidden } = createRequire(import.meta.url)('../.dependency-cruiser.cjs') as {
  options: ICruiseOptions;
  forbidden: NonNullable<NonNullable<ICruiseOptions['ruleSet']>['forbidden']>;
};

const cruised = async (
  folder: string,
  packages: string,
  more: ICruiseOptions = {},
): Promise<ICruiseResult> => {
  const { output } = await cruise([packages], {
    ...options,
    baseDir: folder,
    validate: true,
    ruleSet: { forbidden },
    ...more,
  });
  if (typeof output === 'string') throw new Error(output);
  return output;
};

const circles = ({ summary }: ICruiseResult): readonly string[] =>
  summary.violations.map(
    ({ rule, from, to, cycle }) =>
      `${rule.name}: ${[from, ...(cycle?.map(({ name }) => name) ?? [to])].join(' → ')}`,
  );

it('finds no circle of files or folders in any package', async () => {
  const found = await cruised(root, 'packages');
  // A check that reads nothing finds nothing.
  expect(found.summary.totalCruised).toBeGreaterThan(500);
  expect(circles(found)).toEqual([]);
});

it('would find a circle of types alone', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'circles-'));
  try {
    writeFileSync(join(folder, 'a.ts'), "import type { B } from './b.js';\nexport interface A { b: B }\n");
    writeFileSync(join(folder, 'b.ts'), "import type { A } from './a.js';\nexport interface B { a: A }\n");
    const found = await cruised(folder, '.', { includeOnly: '\\.ts$' });
    expect(circles(found)).toContain('no-circles-of-files: a.ts → b.ts → a.ts');
  } finally {
    rmSync(folder, { recursive: true });
  }
});

it('would find a circle of folders whose files make none', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'circles-'));
  try {
    mkdirSync(join(folder, 'a'));
    mkdirSync(join(folder, 'b'));
    writeFileSync(join(folder, 'a/top.ts'), "export type { B } from '../b/middle.js';\n");
    writeFileSync(join(folder, 'a/low.ts'), 'export type A = string;\n');
    writeFileSync(join(folder, 'b/middle.ts'), "import type { A } from '../a/low.js';\nexport type B = A;\n");
    const found = await cruised(folder, '.', { includeOnly: '\\.ts$' });
    expect(circles(found)).toContain('no-circles-of-folders: a → b → a');
  } finally {
    rmSync(folder, { recursive: true });
  }
});

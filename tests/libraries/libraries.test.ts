import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { installIn } from './installed.js';
import { acceptPrinted, exampleOf, libraries } from './readmes.js';

let folder = '';
let project = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'libraries-'));
  project = installIn(folder);
  for (const name of libraries) writeFileSync(join(project, `${name}.ts`), exampleOf(name).program);
  const options = {
    target: 'ES2022',
    lib: ['ES2023'],
    module: 'NodeNext',
    strict: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: true,
    noEmitOnError: true,
    typeRoots: [
      createRequire(import.meta.url)
        .resolve('@types/node/package.json')
        .replace(/node\/package\.json$/, ''),
    ],
    types: ['node'],
  };
  writeFileSync(
    join(project, 'tsconfig.json'),
    JSON.stringify({ compilerOptions: options, include: ['*.ts'] }),
  );
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const installed = (name: string, file = ''): string => join(project, 'node_modules/@cribwright', name, file);

describe.each(libraries)('@cribwright/%s, packed and installed', (name) => {
  it('says what it is, under which license, and brings its README', () => {
    const manifest = JSON.parse(readFileSync(installed(name, 'package.json'), 'utf8'));
    expect(manifest).toMatchObject({ name: `@cribwright/${name}`, license: 'MIT', type: 'module' });
    expect(manifest.private).toBeUndefined();
    expect(manifest.description.length).toBeGreaterThan(20);
    expect(readFileSync(installed(name, 'LICENSE'), 'utf8')).toContain('MIT License');
    expect(readFileSync(installed(name, 'README.md'), 'utf8')).toContain(`npm install @cribwright/${name}`);
  });

  it('holds every file that its exports name, and no test', () => {
    const { exports } = JSON.parse(readFileSync(installed(name, 'package.json'), 'utf8'));
    const named = Object.values(exports as Record<string, string | Record<string, string>>).flatMap((to) =>
      typeof to === 'string' ? to : Object.values(to),
    );
    expect(named.length).toBeGreaterThan(3);
    expect(named.filter((file) => !existsSync(installed(name, file)))).toEqual([]);
    const files = readdirSync(installed(name), { recursive: true, encoding: 'utf8' });
    expect(files.filter((file) => /\.test\.|tsbuildinfo/.test(file))).toEqual([]);
  });
});

it('compiles the examples of all READMEs, strictly', () => {
  const tsc = createRequire(import.meta.url).resolve('typescript/bin/tsc');
  const errors = (() => {
    try {
      return execFileSync(process.execPath, [tsc, '-p', '.'], { cwd: project, encoding: 'utf8' });
    } catch (error) {
      return String((error as { stdout?: string }).stdout ?? error);
    }
  })();
  expect(errors).toBe('');
});

it.each(libraries)('@cribwright/%s: the example of its README prints what the README says', (name) => {
  const example = exampleOf(name);
  const printed = execFileSync(process.execPath, [`${name}.js`], { cwd: project, encoding: 'utf8' });
  if (process.env.UPDATE_GOLDEN) acceptPrinted(example, printed);
  else expect(printed).toBe(example.prints);
});

it('reads a plan from text and draws it as SVG', () => {
  const svg = readFileSync(join(project, 'side.svg'), 'utf8');
  expect(svg).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
  expect(svg).toContain('</svg>');
});

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Who may import whom. DEVELOPERS.md prints this table; what is absent is absent on purpose. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  units: [],
  messages: ['@cribwright/units', '@fluent/bundle'],
  model: ['@cribwright/messages', '@cribwright/units'],
  engine: ['@cribwright/messages', '@cribwright/model', '@cribwright/units', 'yalps'],
  rules: ['@cribwright/engine', '@cribwright/messages', '@cribwright/model', '@cribwright/units'],
  syntax: ['langium'],
  language: [
    '@cribwright/messages',
    '@cribwright/model',
    '@cribwright/syntax',
    '@cribwright/units',
    'vscode-languageserver-types',
  ],
  workspace: [
    '@cribwright/engine',
    '@cribwright/language',
    '@cribwright/messages',
    '@cribwright/model',
    '@cribwright/rules',
    '@cribwright/syntax',
    '@cribwright/units',
    'vscode-languageserver-types',
    'vscode-uri',
  ],
  drawing: [
    '@cribwright/engine',
    '@cribwright/messages',
    '@cribwright/model',
    '@cribwright/units',
    'pdf-lib',
    'preact',
    'preact-render-to-string',
  ],
  server: [
    '@cribwright/engine',
    '@cribwright/language',
    '@cribwright/messages',
    '@cribwright/model',
    '@cribwright/rules',
    '@cribwright/syntax',
    '@cribwright/units',
    '@cribwright/workspace',
    'node:*',
    'vscode-languageserver',
    'vscode-languageserver-textdocument',
    'vscode-languageserver-types',
    'vscode-uri',
  ],
  preview: ['@cribwright/drawing', '@cribwright/units', 'preact', 'three'],
  extension: [
    '@cribwright/drawing',
    '@cribwright/engine',
    '@cribwright/language',
    '@cribwright/messages',
    '@cribwright/model',
    '@cribwright/preview',
    '@cribwright/server/protocol',
    '@cribwright/workspace',
    'vscode',
    'vscode-languageclient',
  ],
  cli: [
    '@cribwright/drawing',
    '@cribwright/engine',
    '@cribwright/language',
    '@cribwright/messages',
    '@cribwright/model',
    '@cribwright/rules',
    '@cribwright/server',
    '@cribwright/units',
    '@cribwright/workspace',
    'commander',
    'node-sarif-builder',
    'node:*',
  ],
};

/** A package whose files may only name another's types. */
const typesOnly = [
  '@cribwright/preview',
  '@cribwright/workspace',
  '@cribwright/language',
  '@cribwright/model',
].map((whom) => ({ who: 'extension', whom }));

const packages = new URL('../packages/', import.meta.url).pathname;

const sources = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((f) => f.isFile() && /\.tsx?$/.test(f.name) && !/\.test\.tsx?$/.test(f.name))
    .filter((f) => !f.parentPath.endsWith('/testing'))
    .map((f) => join(f.parentPath, f.name));

const imports = (text: string) =>
  [
    ...text.matchAll(
      /^\s*(?:import|export)\b(?<head>[^'";]*?)from\s*['"](?<from>[^'"]+)['"]|\bimport\(['"](?<lazy>[^'"]+)['"]\)|^\s*import\s*['"](?<bare>[^'"]+)['"]/gm,
    ),
  ].map((m) => ({
    from: m.groups?.from ?? m.groups?.lazy ?? m.groups?.bare ?? '',
    typeOnly: /^\s*type\b/.test(m.groups?.head ?? ''),
  }));

const fits = (from: string, list: readonly string[]) =>
  list.some((a) =>
    a.endsWith('*') ? from.startsWith(a.slice(0, -1)) : from === a || from.startsWith(`${a}/`),
  );

describe.each(Object.keys(allowed))('imports of %s', (name) => {
  const files = sources(join(packages, name, 'src'));
  it('has source files', () => expect(files.length).toBeGreaterThan(0));
  it('stay on the road', () => {
    const strays = files.flatMap((file) =>
      imports(readFileSync(file, 'utf8'))
        .filter(({ from }) => !from.startsWith('.') && !fits(from, allowed[name] ?? []))
        .map(({ from }) => `${file.slice(packages.length)} imports ${from}`),
    );
    expect(strays).toEqual([]);
  });
  it('list nothing that is not imported', () => {
    const named = files.flatMap((file) => imports(readFileSync(file, 'utf8')).map(({ from }) => from));
    const idle = (allowed[name] ?? []).filter((entry) => !named.some((from) => fits(from, [entry])));
    expect(idle).toEqual([]);
  });
  it('names only types where it may know no more', () => {
    const strays = files.flatMap((file) =>
      imports(readFileSync(file, 'utf8'))
        .filter((i) => !i.typeOnly && typesOnly.some((t) => t.who === name && fits(i.from, [t.whom])))
        .map(({ from }) => `${file.slice(packages.length)} imports more than types from ${from}`),
    );
    expect(strays).toEqual([]);
  });
});

it('keeps the engine and the drawing free of files, clocks and chance', () => {
  const strays = ['units', 'messages', 'model', 'engine', 'rules', 'drawing'].flatMap((name) =>
    sources(join(packages, name, 'src')).filter((file) =>
      /\bDate\.now|new Date\(|Math\.random|process\.|performance\.now|toLocale/.test(
        readFileSync(file, 'utf8'),
      ),
    ),
  );
  expect(strays).toEqual([]);
});

it('replaces no module and no global in a test: all test files of a process share them', () => {
  const files = [packages, new URL('.', import.meta.url).pathname].flatMap((folder) =>
    readdirSync(folder, { withFileTypes: true, recursive: true })
      .filter((f) => f.isFile() && /\.test\.tsx?$/.test(f.name) && !/node_modules|dist/.test(f.parentPath))
      .map((f) => join(f.parentPath, f.name)),
  );
  expect(files.length).toBeGreaterThan(200);
  expect(
    files.filter((file) => /\bvi\.(?:mock|hoisted|stub|useFake)/.test(readFileSync(file, 'utf8'))),
  ).toEqual([]);
});

/** Files whose own code, without comments, holds what the pattern finds. */
const holding = (pattern: RegExp, but: readonly string[]): readonly string[] =>
  Object.keys(allowed)
    .flatMap((name) => sources(join(packages, name, 'src')))
    .map((file) => file.slice(packages.length))
    .filter((file) => !but.includes(file) && !file.includes('/generated/'))
    .filter((file) =>
      pattern.test(readFileSync(join(packages, file), 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')),
    );

describe('one place for each fact', () => {
  it('converts units by the factors of the units package alone', () => {
    const factors =
      /\b(?:0\.0254|0\.3048|0\.4535\d*|4\.448\d*|4448\.?2\d*|6894\.?7\d*|6\.8947\d*|47\.88\d*)\b/;
    const strays = holding(factors, []).filter((file) => !file.startsWith('units/'));
    expect(strays).toEqual([]);
    expect(factors.test('const foot = 0.3048;')).toBe(true);
  });
  it('asks the clock for the day in one place', () =>
    expect(holding(/new Date\(/, [])).toEqual(['workspace/src/workspace/today.ts']));
  it('says in one table which way each limit is safe', () =>
    expect(holding(/safer: '(?:lower|higher)'/, [])).toEqual(['model/src/policy/limit.ts']));
  it('counts findings by severity in one place', () =>
    expect(
      holding(/\.severity === \w+\)\.length|severity === '(?:danger|warning|note)'\)\.length/, [
        // Faults of a text, of which it matters only whether there is one.
        'workspace/src/workspace/check.ts',
      ]),
    ).toEqual(['engine/src/finding/tally.ts']));
  it('names in one place what a search for plans passes over', () =>
    expect(holding(/'node_modules'|\^node_modules/, [])).toEqual(['server/src/files/plan-files.ts']));
});

it('prints the table of imports in DEVELOPERS.md as it is enforced', () => {
  const page = readFileSync(new URL('../DEVELOPERS.md', import.meta.url), 'utf8');
  const rows = [...page.matchAll(/^\| `(\w+)` \| (.*?) \| .*\|$/gm)].map(([, name, cell]) => [
    name,
    [...(cell ?? '').matchAll(/`([^`]+)`/g)].map(([, from]) => from).sort(),
  ]);
  const enforced = Object.entries(allowed).map(([name, list]) => [name, [...list].sort()]);
  expect(Object.fromEntries(rows)).toEqual(Object.fromEntries(enforced));
});

import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { unzipSync } from 'fflate';
import { beforeAll, expect, it } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;
let files: Readonly<Record<string, Uint8Array>> = {};

beforeAll(() => {
  execFileSync(process.execPath, ['packages/extension/build/package.mjs'], { cwd: root, stdio: 'pipe' });
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  files = unzipSync(readFileSync(join(root, `cribwright-${version}.vsix`)));
});

it('holds these files and no others', async () => {
  // Chunks of the panel carry a hash of their content in their name.
  const names = Object.keys(files).map((name) => name.replace(/-[A-Z0-9]{8}\./, '-HASH.'));
  await expect(`${[...new Set(names)].sort().join('\n')}\n`).toMatchFileSnapshot('package-files.txt');
});

const kiB = 1024;
it.each([
  ['extension/packages/extension/dist/extension.cjs', 712 * kiB],
  ['extension/packages/extension/dist/extension.web.js', 694 * kiB],
  ['extension/packages/server/dist/server.cjs', 1120 * kiB],
  ['extension/packages/server/dist/server.worker.js', 1130 * kiB],
  ['extension/packages/preview/dist/panel/panel.js', 150 * kiB],
])('keeps %s small', (name, most) => {
  expect(files[name]?.byteLength).toBeGreaterThan(kiB);
  expect(files[name]?.byteLength).toBeLessThan(most);
});

it('carries license, page, changes and its icon, and nothing that is for building', () => {
  const text = (name: string) => new TextDecoder().decode(files[name]);
  expect(text('extension/LICENSE.txt')).toContain('MIT License');
  expect(text('extension/readme.md')).toContain('Cribwright');
  expect(text('extension/changelog.md')).toContain('0.1.0');
  const manifest = JSON.parse(text('extension/package.json'));
  expect(files[`extension/${manifest.icon}`]?.byteLength).toBeGreaterThan(kiB);
  expect(Object.keys(manifest)).not.toContain('devDependencies');
  expect(Object.keys(manifest)).not.toContain('workspaces');
});

it('says everything that its manifest shows in English and in Spanish', () => {
  const json = (name: string): Readonly<Record<string, unknown>> =>
    JSON.parse(new TextDecoder().decode(files[`extension/${name}`]));
  const [english, spanish] = [json('package.nls.json'), json('package.nls.es.json')];
  const keys = [...JSON.stringify(json('package.json')).matchAll(/"%([^"%]+)%"/g)].map(
    ([, key]) => key ?? '',
  );
  expect(keys.length).toBeGreaterThan(40);
  expect(Object.keys(english)).toEqual(keys);
  expect(Object.keys(spanish)).toEqual(keys);
  expect(keys.filter((key) => english[key] === spanish[key])).toEqual([
    'contributes.configuration.properties.cribwright.language.enumDescriptions.2',
  ]);
  // Links of the walkthrough lead to the same commands.
  const links = (text: unknown): readonly string[] => String(text).match(/\(command:[^)]+\)/g) ?? [];
  for (const key of keys) expect(links(spanish[key])).toEqual(links(english[key]));
});

it('names no file in its manifest that it does not hold', () => {
  const manifest = new TextDecoder().decode(files['extension/package.json']);
  const named = [...manifest.matchAll(/"(?:\.\/)?((?:packages|syntaxes)\/[\w./-]+\.\w+)"/g)].map(
    ([, p]) => p,
  );
  expect(named.length).toBeGreaterThan(10);
  expect(named.filter((path) => !(`extension/${path}` in files))).toEqual([]);
});

interface Metafile {
  readonly outputs: Readonly<
    Record<string, { readonly inputs: Readonly<Record<string, { readonly bytesInOutput: number }>> }>
  >;
}

/** The files of which something is left in a bundle. */
const inputsOf = ({ outputs }: Metafile): readonly string[] =>
  Object.values(outputs).flatMap(({ inputs }) =>
    Object.entries(inputs)
      .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
      .map(([input]) => input),
  );

/** The nearest folder above a file that has a manifest and stands right below `node_modules` or below a scope. */
function packageFolder(file: string): string {
  const folder = dirname(file);
  const above = basename(dirname(folder));
  const isTop = above === 'node_modules' || above.startsWith('@');
  return isTop && existsSync(join(folder, 'package.json')) ? folder : packageFolder(folder);
}

it('carries the notices of every third-party package in its bundles', () => {
  const notices = new TextDecoder().decode(files['extension/ThirdPartyNotices.txt']);
  const metafiles = join(root, '.cache/metafiles');
  const bundles = readdirSync(metafiles).map((file) => ({
    bundle: file.replace(/\.json$/, ''),
    inputs: inputsOf(JSON.parse(readFileSync(join(metafiles, file), 'utf8'))),
  }));
  // One for each program of the package.
  expect(bundles.map(({ bundle }) => bundle).sort()).toEqual(
    ['cli', 'extension', 'extension.web', 'panel', 'server', 'server.worker'].sort(),
  );
  const manifests = new Set(
    bundles.flatMap(({ inputs }) =>
      inputs
        .filter((input) => input.includes('node_modules/'))
        .map((input) => join(packageFolder(join(root, input)), 'package.json')),
    ),
  );
  const inside = [...manifests]
    .map((path) => JSON.parse(readFileSync(path, 'utf8')))
    .map(({ name, version, license }) => ({ title: `${name} ${version}`, license }));
  const sections = new Map(
    notices
      .split(/^={80}$/m)
      .slice(1)
      .map((section) => [section.trim().split('\n')[0], section] as const),
  );
  expect(inside.map(({ title }) => title)).toEqual(
    expect.arrayContaining([
      expect.stringMatching(/^langium /),
      expect.stringMatching(/^commander /),
      expect.stringMatching(/^preact /),
      expect.stringMatching(/^three /),
      expect.stringMatching(/^vscode-languageclient /),
    ]),
  );
  for (const { title, license } of inside) {
    const section = sections.get(title) ?? '';
    expect(section, title).toContain(`\nLicense: ${license}\n`);
    expect(section, title).toMatch(/\n--- .+\n\n[\s\S]{200,}/);
    expect(section, title).toMatch(/copyright|blue oak model license/i);
  }
});

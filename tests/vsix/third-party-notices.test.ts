import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

type Metafiles = Readonly<Record<string, unknown>>;
const { bundledPackages, noticeOf, thirdPartyNotices } = (await import(
  new URL('../../packages/extension/build/third-party-notices.mjs', import.meta.url).href
)) as {
  bundledPackages: (metafiles: Metafiles) => readonly { folder: string; bundles: readonly string[] }[];
  noticeOf: (root: string, folder: string) => { texts: readonly { file: string; text: string }[] };
  thirdPartyNotices: (root: string, metafiles: Metafiles) => string;
};

let root = '';
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'notices-'));
});
afterEach(() => rmSync(root, { recursive: true }));

/** Writes a package with a license and these further files, and gives its folder. */
function written(
  name: string,
  license: unknown,
  files: Readonly<Record<string, string>> = { LICENSE: 'Copyright one. Do as you like.' },
): string {
  const folder = `node_modules/${name}`;
  const manifest = JSON.stringify({ name, version: '1.2.3', license });
  for (const [file, text] of Object.entries({ ...files, 'package.json': manifest })) {
    mkdirSync(dirname(join(root, folder, file)), { recursive: true });
    writeFileSync(join(root, folder, file), text);
  }
  return folder;
}

const metafile = (inputs: Readonly<Record<string, number>>) => ({
  outputs: {
    'out.js': {
      inputs: Object.fromEntries(Object.entries(inputs).map(([path, n]) => [path, { bytesInOutput: n }])),
    },
  },
});

describe('packages inside bundles', () => {
  it('are those with bytes in an output, by the folder that they were taken from', () => {
    const found = bundledPackages({
      b: metafile({ 'packages/a/src/main.ts': 9, 'node_modules/x/lib/x.js': 5, 'node_modules/gone/i.js': 0 }),
      a: metafile({
        'node_modules/x/y.js': 1,
        'node_modules/@scope/z/z.js': 1,
        'node_modules/x/node_modules/y/y.js': 1,
        'packages/cli/node_modules/w/w.js': 1,
      }),
    });
    expect(found).toEqual([
      { folder: 'node_modules/@scope/z', bundles: ['a'] },
      { folder: 'node_modules/x', bundles: ['a', 'b'] },
      { folder: 'node_modules/x/node_modules/y', bundles: ['a'] },
      { folder: 'packages/cli/node_modules/w', bundles: ['a'] },
    ]);
  });
});

describe('the notice of a package', () => {
  it.each(['MIT', 'Apache-2.0', '(MIT OR GPL-3.0-only)', 'BSD-3-Clause OR Apache-2.0'])(
    'may be %s',
    (license) => {
      expect(noticeOf(root, written('p', license)).texts).toHaveLength(1);
    },
  );

  it.each([
    'GPL-3.0-only',
    'AGPL-3.0-or-later',
    'MIT AND GPL-2.0-only',
    'UNLICENSED',
    'SEE LICENSE IN LICENSE',
    undefined,
  ])('may not be %s', (license) => {
    const folder = written('p', license);
    expect(() => noticeOf(root, folder)).toThrow(/^p 1\.2\.3 has the license .* A bundle may hold/);
  });

  it('is refused without the text of its license, or with an empty one', () => {
    expect(() => noticeOf(root, written('none', 'MIT', { 'README.md': 'License: MIT' }))).toThrow(
      'none 1.2.3 (MIT): the full text of its license is missing',
    );
    expect(() => noticeOf(root, written('empty', 'MIT', { LICENSE: ' \n' }))).toThrow('is missing');
    expect(() => noticeOf(root, written('notice', 'MIT', { NOTICE: 'Copyright one.' }))).toThrow(
      'is missing',
    );
  });

  it('is refused where it is under two licenses at once and has the text of one', () => {
    expect(() => noticeOf(root, written('both', 'MIT AND Zlib'))).toThrow('is missing');
    const both = written('pako', 'MIT AND Zlib', { LICENSE: 'first', 'lib/zlib/README': 'second' });
    expect(noticeOf(root, both).texts.map(({ text }) => text)).toEqual(['first', 'second']);
  });

  it('holds every notice in full, with line feeds alone', () => {
    const folder = written('p', 'Apache-2.0', {
      'License.txt': '\uFEFF\r\n   Apache License\r\n2.0\r\n',
      NOTICE: 'Made by many.',
      'thirdpartynotices.txt': 'And others.',
      'licenses.js': 'no notice',
      '_copyArray.js': 'no notice',
    });
    expect(noticeOf(root, folder).texts).toEqual([
      { file: 'License.txt', text: '   Apache License\n2.0' },
      { file: 'NOTICE', text: 'Made by many.' },
      { file: 'thirdpartynotices.txt', text: 'And others.' },
    ]);
  });
});

it('prints the notices of all packages, one after the other', () => {
  written('x', 'MIT');
  written('@scope/z', 'ISC', { 'LICENSE.md': 'Copyright two.' });
  const page = thirdPartyNotices(root, {
    cli: metafile({ 'node_modules/x/x.js': 1, 'node_modules/@scope/z/z.js': 2 }),
  });
  const line = '='.repeat(80);
  expect(page).toContain(`
${line}

@scope/z 1.2.3
License: ISC
In: cli

--- LICENSE.md

Copyright two.

${line}

x 1.2.3
License: MIT
In: cli

--- LICENSE

Copyright one. Do as you like.
`);
});

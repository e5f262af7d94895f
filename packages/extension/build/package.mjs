// Packs the extension: npm run package. Only what is listed here goes in; a test compares the list.
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createVSIX } from '@vscode/vsce';
import { changelog } from './changelog.mjs';
import { localized, translated } from './localized.mjs';
import { thirdPartyNotices } from './third-party-notices.mjs';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const stage = join(root, '.cache/package');
const metafiles = join(root, '.cache/metafiles');

/** Files and folders of the package, beside the manifest. */
const contents = [
  'LICENSE',
  'README.md',
  'packages/cli/dist/cribwright.cjs',
  'packages/extension/dist/extension.cjs',
  'packages/extension/dist/extension.web.js',
  'packages/extension/l10n',
  'packages/extension/media',
  'packages/server/dist/server.cjs',
  'packages/server/dist/server.worker.js',
  'packages/preview/dist/panel',
  'syntaxes',
];

rmSync(metafiles, { recursive: true, force: true });
execFileSync(process.execPath, [join(root, 'packages/extension/build/bundle.mjs')], { stdio: 'inherit' });

rmSync(stage, { recursive: true, force: true });
for (const path of contents) {
  if (!existsSync(join(root, path))) throw new Error(`${path} is missing: it goes into the package.`);
  mkdirSync(dirname(join(stage, path)), { recursive: true });
  cpSync(join(root, path), join(stage, path), {
    recursive: true,
    filter: (from) => basename(from) !== 'readme',
  });
}
// The page in the editor shows no picture that lies in the package, so the README goes in without them.
const readme = readFileSync(join(root, 'README.md'), 'utf8');
writeFileSync(join(stage, 'README.md'), readme.replace(/^!\[.*\]\(packages\/.*\)\n+/gm, ''));
const {
  workspaces,
  scripts,
  overrides,
  devDependencies,
  private: _,
  ...manifest
} = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const { manifest: packed, words } = localized(manifest);
const spanish = JSON.parse(readFileSync(join(root, 'packages/extension/nls/manifest.es.json'), 'utf8'));
for (const [name, content] of [
  ['package.json', packed],
  ['package.nls.json', words],
  ['package.nls.es.json', translated(words, spanish)],
])
  writeFileSync(join(stage, name), `${JSON.stringify(content, null, 2)}\n`);
writeFileSync(join(stage, 'CHANGELOG.md'), changelog);
writeFileSync(
  join(stage, 'ThirdPartyNotices.txt'),
  thirdPartyNotices(
    root,
    Object.fromEntries(
      readdirSync(metafiles).map((file) => [
        basename(file, '.json'),
        JSON.parse(readFileSync(join(metafiles, file), 'utf8')),
      ]),
    ),
  ),
);
// The stage holds what is listed above and no more, so nothing is left to ignore.
writeFileSync(join(stage, '.vscodeignore'), '.vscodeignore\n');

const packagePath = join(root, `cribwright-${manifest.version}.vsix`);
await createVSIX({
  cwd: stage,
  packagePath,
  dependencies: false,
  skipLicense: true,
  allowMissingRepository: true,
  // There is no public address that relative links could be rewritten to.
  rewriteRelativeLinks: false,
});
console.log(`To install it: code --install-extension ${packagePath}`);

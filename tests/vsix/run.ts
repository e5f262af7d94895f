import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bundleSuite } from '../host/bundle-suite.js';
import { runInBrowser } from '../host/run-in-browser.js';
import { tell } from '../host/tell.js';
import { root, vscodeServer } from '../host/vscode-server.js';

// The same suite as everywhere, against the package installed as a user installs it.
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const vsix = join(root, `cribwright-${version}.vsix`);
if (!existsSync(vsix)) execFileSync('npm', ['run', 'package'], { cwd: root, stdio: 'inherit' });

const data = mkdtempSync(join(tmpdir(), 'cribwright-installed-'));
execFileSync(
  process.execPath,
  [
    join(vscodeServer(), 'out/server-main.js'),
    ...['--install-extension', vsix, '--server-data-dir', data, '--accept-server-license-terms'],
  ],
  { stdio: 'inherit' },
);

// A host runs a suite only beside an extension in development. This one is empty.
const empty = join(data, 'empty');
mkdirSync(empty);
writeFileSync(
  join(empty, 'package.json'),
  JSON.stringify({ name: 'empty', publisher: 'test', version: '0.0.0', engines: { vscode: '^1.91.0' } }),
);
tell('installed package', await runInBrowser(empty, await bundleSuite('node'), data));

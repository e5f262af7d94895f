import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root, vscodeServer } from './vscode-server.js';

export interface Installed {
  /** Folder of the server's own files, in which the package is installed. */
  readonly data: string;
  /** An extension with nothing in it: a host runs a suite only beside an extension in development. */
  readonly empty: string;
}

/** Installs the package as a user does, and makes it where it is not there. */
export const installed = (): Installed => {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const vsix = join(root, `cribwright-${version}.vsix`);
  if (!existsSync(vsix))
    execFileSync(process.execPath, [join(root, 'packages/extension/build/package.mjs')], {
      stdio: 'inherit',
    });
  const data = mkdtempSync(join(tmpdir(), 'cribwright-installed-'));
  execFileSync(
    process.execPath,
    [
      join(vscodeServer(), 'out/server-main.js'),
      ...['--install-extension', vsix, '--server-data-dir', data, '--accept-server-license-terms'],
    ],
    { stdio: 'inherit' },
  );
  const empty = join(data, 'empty');
  mkdirSync(empty);
  writeFileSync(
    join(empty, 'package.json'),
    JSON.stringify({ name: 'empty', publisher: 'test', version: '0.0.0', engines: { vscode: '^1.91.0' } }),
  );
  return { data, empty };
};

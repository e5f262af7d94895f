import { execFileSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[\\/]$/, '');

const version = '4.100.3';
/** The first that comes with its program instead of fetching it when it is installed. */
const searchVersion = '1.18.0';
const cache = join(root, '.cache', `vscode-server-${version}`);
const server = join(cache, 'node_modules/code-server/lib/vscode');

/**
 * The folder of a complete VS Code server (VS Code 1.100) with its browser workbench. Installed from npm on
 * first use into `.cache/`, outside the workspaces.
 *
 * Its install scripts stay off: they refuse to run as root, and what they fetch is not needed here.
 */
export const vscodeServer = (): string => {
  const done = join(cache, 'installed');
  if (existsSync(done)) return server;
  console.log(`Installing a VS Code server (${version}) into ${cache}, once.`);
  mkdirSync(cache, { recursive: true });
  writeFileSync(join(cache, 'package.json'), '{ "private": true }\n');
  const npm = (cwd: string, ...args: string[]) =>
    execFileSync('npm', [...args, '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], {
      cwd,
      stdio: 'inherit',
      shell: process.platform === 'win32',
    });
  npm(cache, 'install', '--no-save', `code-server@${version}`, `@vscode/ripgrep@${searchVersion}`);
  npm(server, 'install', '--omit=dev');
  const program = process.platform === 'win32' ? 'rg.exe' : 'rg';
  const platform = `@vscode/ripgrep-${process.platform}-${process.arch}`;
  const bin = join(server, 'node_modules/@vscode/ripgrep/bin');
  mkdirSync(bin, { recursive: true });
  copyFileSync(join(cache, 'node_modules', platform, 'bin', program), join(bin, program));
  writeFileSync(done, '');
  return server;
};

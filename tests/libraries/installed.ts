import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { libraries } from './readmes.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly dependencies?: Readonly<Record<string, string>>;
}

const manifestOf = (folder: string): Manifest =>
  JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

/** Where Node finds a package from a folder. */
function found(name: string, from: string): string {
  for (let folder = from; folder !== dirname(folder); folder = dirname(folder)) {
    const path = join(folder, 'node_modules', name);
    if (existsSync(join(path, 'package.json'))) return path;
  }
  throw new Error(`${name} is not installed for ${from}`);
}

/** Folders of all packages of others that the libraries stand on. Of two versions, the one at the top is taken. */
function thirdParties(): readonly string[] {
  const folders = new Map<string, string>();
  const follow = (folder: string): void => {
    for (const name of Object.keys(manifestOf(folder).dependencies ?? {})) {
      if (name.startsWith('@cribwright/')) continue;
      const path = found(name, folder);
      const known = folders.get(name);
      if (known !== undefined && known.length <= path.length) continue;
      folders.set(name, path);
      follow(path);
    }
  };
  for (const name of libraries) follow(join(root, 'packages', name));
  return [...folders.values()];
}

const npm = (args: readonly string[], cwd: string): void => {
  execFileSync('npm', [...args, '--offline', '--ignore-scripts', '--no-audit', '--no-fund', '--silent'], {
    cwd,
    stdio: 'pipe',
  });
};

/**
 * Packs the libraries and what they stand on, and installs them in an empty project: from tarballs alone, with no
 * network.
 *
 * @param folder an empty folder
 * @returns the folder of the project
 */
export function installIn(folder: string): string {
  const tarballs = join(folder, 'tarballs');
  execFileSync(process.execPath, ['.ci/libraries.mjs', tarballs], { cwd: root, stdio: 'pipe' });
  npm(['pack', '--pack-destination', tarballs, ...thirdParties()], root);
  const project = join(folder, 'project');
  mkdirSync(project);
  const names = readdirSync(tarballs).map((file) => [nameIn(join(tarballs, file)), file] as const);
  const manifest = {
    name: 'empty',
    private: true,
    type: 'module',
    dependencies: Object.fromEntries(names.map(([name, file]) => [name, `file:../tarballs/${file}`])),
    // No second version of anything: it would have to come over the network.
    overrides: Object.fromEntries(names.map(([name]) => [name, `$${name}`])),
  };
  writeFileSync(join(project, 'package.json'), JSON.stringify(manifest));
  npm(['install'], project);
  return project;
}

/** The name of the package in a tarball. */
const nameIn = (tarball: string): string =>
  JSON.parse(execFileSync('tar', ['-xzOf', tarball, 'package/package.json'], { encoding: 'utf8' })).name;

// Packs the packages that other projects may use, as tarballs that npm installs: npm run libraries -- FOLDER
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { node, root, run } from './step.mjs';

const folder = process.argv[2];
if (folder === undefined) {
  console.error('Name the folder to write the tarballs into: npm run libraries -- FOLDER');
  process.exit(2);
}

const packages = readdirSync(join(root, 'packages'))
  .map((name) => join(root, 'packages', name))
  .filter((path) => existsSync(join(path, 'package.json')))
  .filter((path) => JSON.parse(readFileSync(join(path, 'package.json'), 'utf8')).private !== true);

/** The compiler leaves in place what it made of a file that is gone since. */
const dropStale = (path) => {
  const dist = join(path, 'dist');
  for (const file of readdirSync(dist, { recursive: true })) {
    const stem = /^(.*?)(?:\.d\.ts|\.js)(?:\.map)?$/.exec(file)?.[1];
    if (stem === undefined) continue;
    const made = ['.ts', '.tsx'].some((end) => existsSync(join(path, 'src', `${stem}${end}`)));
    if (!made) rmSync(join(dist, file));
  }
};

const compiled = node(['node_modules/typescript/bin/tsc', '-b', ...packages]);
if (compiled !== 0) process.exit(compiled);
for (const path of packages) dropStale(path);

const out = resolve(folder);
mkdirSync(out, { recursive: true });
process.exit(run('npm', ['pack', '--silent', '--offline', '--pack-destination', out, ...packages]));

// Lays out plan files in place: node --conditions=source --import tsx packages/server/build/format.ts PATH…
// Folders are searched. With --check nothing is written, and the exit code is 1 where a file is not laid out.
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { formatted } from '../../language/src/formatter/formatted.js';
import { openWorkspace } from '../../workspace/src/workspace/open-workspace.js';

const check = process.argv.includes('--check');
const paths = process.argv.slice(2).filter((a) => a !== '--check');

const plansIn = (path: string): string[] =>
  statSync(path).isDirectory()
    ? readdirSync(path, { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.crib'))
        .map((name) => join(path, name))
    : [path];

for (const path of paths.flatMap((p) => plansIn(resolve(p)))) {
  const uri = pathToFileURL(path).toString();
  const before = readFileSync(path, 'utf8');
  const workspace = openWorkspace({ files: { read: async () => undefined }, folders: [] });
  workspace.put(uri, before, 1);
  const file = workspace.bound(uri);
  const after = file ? formatted(file) : before;
  if (after === before) continue;
  console.log(`${path}${check ? ' is not laid out' : ''}`);
  if (check) process.exitCode = 1;
  else writeFileSync(path, after);
}

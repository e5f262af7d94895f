import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { URI } from 'vscode-uri';
import { diskFiles } from './disk-files.js';

const others = { read: async (uri: string) => `asked for ${uri}`, list: async () => ['memory:/a.crib'] };
let folder = '';
const uri = (...path: string[]) => URI.file(join(folder, ...path)).toString();

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'crib files '));
  mkdirSync(join(folder, 'plans'));
  mkdirSync(join(folder, '.git'));
  writeFileSync(join(folder, 'plans', 'a b.crib'), 'plan "a" {}');
  writeFileSync(join(folder, 'plans', 'notes.txt'), 'no plan');
  writeFileSync(join(folder, '.git', 'hidden.crib'), 'plan "hidden" {}');
  symlinkSync(folder, join(folder, 'plans', 'round'));
});
afterEach(() => rmSync(folder, { recursive: true }));

it('reads a file whose path has a space', async () => {
  expect(await diskFiles(others).read(uri('plans', 'a b.crib'))).toBe('plan "a" {}');
});

it('says of a missing file that it is not there, and of a folder that it is no file', async () => {
  expect(await diskFiles(others).read(uri('none.crib'))).toBeUndefined();
  expect(await diskFiles(others).read(uri('plans'))).toEqual({ unreadable: 'not a file' });
});

it('lists plans only, past hidden folders and circles', async () => {
  expect(await diskFiles(others).list(uri(), 100)).toEqual([uri('plans', 'a b.crib')]);
});

it('lists a plan behind a link too, and none outside the folder', async () => {
  symlinkSync(join(folder, 'plans', 'a b.crib'), join(folder, 'linked.crib'));
  symlinkSync(join(folder, 'gone'), join(folder, 'broken.crib'));
  symlinkSync('/etc/passwd', join(folder, 'system.crib'));
  symlinkSync('loop.crib', join(folder, 'loop.crib'));
  expect(await diskFiles(others).list(uri(), 100)).toEqual([uri('linked.crib'), uri('plans', 'a b.crib')]);
});

it('stops at the limit', async () => {
  for (let i = 0; i < 5; i++) writeFileSync(join(folder, `p${i}.crib`), '');
  expect(await diskFiles(others).list(uri(), 3)).toHaveLength(3);
});

it('leaves other schemes to the client', async () => {
  expect(await diskFiles(others).read('vscode-vfs:/x.crib')).toBe('asked for vscode-vfs:/x.crib');
  expect(await diskFiles(others).list('vscode-vfs:/', 9)).toEqual(['memory:/a.crib']);
});

import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { findCribFiles, shortPath } from './crib-files.js';

const folder = mkdtempSync(join(tmpdir(), 'cribwright-files-'));
for (const name of [
  'plans/b.crib',
  'plans/a.crib',
  'plans/deep/c.crib',
  'node_modules/x/d.crib',
  'notes.txt',
]) {
  mkdirSync(join(folder, name, '..'), { recursive: true });
  writeFileSync(join(folder, name), '');
}
mkdirSync(join(folder, 'bare'));

it('takes a folder for every plan file in it, sorted', () => {
  const found = findCribFiles(folder, ['.']);
  expect(found.files.map((f) => shortPath(folder, f))).toEqual([
    'plans/a.crib',
    'plans/b.crib',
    'plans/deep/c.crib',
  ]);
  expect(found.missing).toEqual([]);
});

it('takes a named file whatever its ending, and each file once', () => {
  const found = findCribFiles(folder, ['notes.txt', 'plans/a.crib', 'plans/a.crib']);
  expect(found.files.map((f) => shortPath(folder, f))).toEqual(['notes.txt', 'plans/a.crib']);
});

it('says which paths lead nowhere', () => {
  expect(findCribFiles(folder, ['gone.crib', 'bare']).missing).toEqual([
    { path: 'gone.crib', why: 'there is no such file or folder' },
    { path: 'bare', why: 'no .crib file is in it' },
  ]);
});

it('keeps the whole path of what lies outside', () => {
  expect(shortPath(join(folder, 'plans'), join(folder, 'notes.txt'))).toBe(join(folder, 'notes.txt'));
});

it('checks a plan behind a link too, and runs in no circle', () => {
  const linked = mkdtempSync(join(tmpdir(), 'cribwright-linked-'));
  symlinkSync(join(folder, 'plans/a.crib'), join(linked, 'a.crib'));
  symlinkSync(linked, join(linked, 'round'));
  symlinkSync(join(folder, 'gone.crib'), join(linked, 'broken.crib'));
  expect(findCribFiles(linked, ['.']).files.map((f) => shortPath(linked, f))).toEqual([
    'a.crib',
    'broken.crib',
  ]);
});

it('hands on what is neither file nor folder, so that its reader says why it cannot be read', () => {
  expect(findCribFiles(folder, ['/dev/null'])).toEqual({ files: ['/dev/null'], missing: [] });
});

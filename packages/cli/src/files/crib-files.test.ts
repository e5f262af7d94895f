import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { english } from '@cribwright/messages/testing';
import { diskFolders } from '@cribwright/server';
import { describe, expect, it } from 'vitest';
import { type Found, findCribFiles, shortPath } from './crib-files.js';

const pathsOf = (cwd: string, found: Found) => found.files.map((f) => shortPath(cwd, f.path));

const missingOf = (found: Found) => found.missing.map(({ path, why }) => ({ path, why: english(why) }));

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

it('takes a folder for every plan file in it, sorted', async () => {
  const found = await findCribFiles(folder, ['.']);
  expect(pathsOf(folder, found)).toEqual(['plans/a.crib', 'plans/b.crib', 'plans/deep/c.crib']);
  expect(found.missing).toEqual([]);
});

it('takes a named file whatever its ending, and each file once', async () => {
  const found = await findCribFiles(folder, ['notes.txt', 'plans/a.crib', 'plans/a.crib']);
  expect(pathsOf(folder, found)).toEqual(['notes.txt', 'plans/a.crib']);
});

it('says which paths lead nowhere', async () => {
  expect(missingOf(await findCribFiles(folder, ['gone.crib', 'bare']))).toEqual([
    { path: 'gone.crib', why: 'there is no such file or folder' },
    { path: 'bare', why: 'it has no .crib file' },
  ]);
});

it('keeps the whole path of what lies outside', async () => {
  expect(shortPath(join(folder, 'plans'), join(folder, 'notes.txt'))).toBe(join(folder, 'notes.txt'));
});

describe('links', () => {
  const linked = mkdtempSync(join(tmpdir(), 'cribwright-linked-'));
  mkdirSync(join(linked, 'shared'));
  mkdirSync(join(linked, 'here'));
  writeFileSync(join(linked, 'shared', 'b.crib'), '');
  symlinkSync(join(linked, 'shared', 'b.crib'), join(linked, 'here', 'a.crib'));
  symlinkSync(linked, join(linked, 'here', 'round'));
  symlinkSync(linked, join(linked, 'here', 'folder.crib'));

  it('to a plan in the same workspace are followed, and run in no circle', async () => {
    const found = await findCribFiles(linked, ['.']);
    expect(pathsOf(linked, found)).toEqual(['here/a.crib', 'shared/b.crib']);
    expect(found.missing).toEqual([]);
    expect(pathsOf(linked, await findCribFiles(linked, ['here']))).toEqual(['here/a.crib']);
  });

  it('that lead outside, nowhere, or back to themselves are reported and passed over', async () => {
    const bad = mkdtempSync(join(tmpdir(), 'cribwright-bad-'));
    writeFileSync(join(bad, 'good.crib'), '');
    symlinkSync('/etc/passwd', join(bad, 'system.crib'));
    symlinkSync(join(folder, 'plans/a.crib'), join(bad, 'far.crib'));
    symlinkSync(join(bad, 'gone'), join(bad, 'broken.crib'));
    symlinkSync(join(bad, 'loop.crib'), join(bad, 'loop.crib'));
    const found = await findCribFiles(bad, ['.']);
    expect(pathsOf(bad, found)).toEqual(['good.crib']);
    const why = Object.fromEntries(missingOf(found).map((m) => [m.path, m.why]));
    expect(Object.keys(why).sort()).toEqual(['broken.crib', 'far.crib', 'loop.crib', 'system.crib']);
    expect(why['system.crib']).toContain('leads outside this folder');
    expect(why['far.crib']).toContain('leads outside this folder');
    expect(why['broken.crib']).toBe('there is no such file or folder');
    expect(why['loop.crib']).toBe('it is a link that leads back to itself');
  });

  it('that were named by themselves stop nothing else', async () => {
    const bad = mkdtempSync(join(tmpdir(), 'cribwright-bad-'));
    writeFileSync(join(bad, 'good.crib'), '');
    symlinkSync(join(bad, 'loop'), join(bad, 'loop'));
    const found = await findCribFiles(bad, ['loop', 'good.crib']);
    expect(pathsOf(bad, found)).toEqual(['good.crib']);
    expect(missingOf(found)).toEqual([{ path: 'loop', why: 'it is a link that leads back to itself' }]);
  });
});

it('reports a folder that may not be looked into, and goes on with the others', async () => {
  const denied = Object.assign(new Error('EACCES: permission denied'), { code: 'EACCES' });
  const found = await findCribFiles(folder, ['.'], (within) => ({
    ...diskFolders(within),
    list: async (at) => {
      if (at.endsWith('deep')) throw denied;
      return await diskFolders(within).list(at);
    },
  }));
  expect(pathsOf(folder, found)).toEqual(['plans/a.crib', 'plans/b.crib']);
  expect(missingOf(found)).toEqual([{ path: 'plans/deep', why: 'there is no permission to open it' }]);
});

it('hands on what is neither file nor folder, so that its reader says why it cannot be read', async () => {
  expect(await findCribFiles(folder, ['/dev/null'])).toEqual({
    files: [{ path: '/dev/null', within: undefined }],
    missing: [],
  });
});

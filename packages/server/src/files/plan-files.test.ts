import { expect, it } from 'vitest';
import { type FolderEntry, type Folders, planFilesIn } from './plan-files.js';

const entry = (address: string, kind: FolderEntry['kind']): FolderEntry => ({
  name: address.slice(address.lastIndexOf('/') + 1),
  address,
  kind,
});
const tree: Readonly<Record<string, readonly FolderEntry[]>> = {
  top: [
    entry('top/deep', 'folder'),
    entry('top/.git', 'folder'),
    entry('top/node_modules', 'folder'),
    entry('top/closed', 'folder'),
    entry('top/a.crib', 'file'),
    entry('top/notes.txt', 'file'),
    entry('top/near.crib', 'link'),
    entry('top/far.crib', 'link'),
    entry('top/round', 'link'),
    entry('top/broken.crib', 'link'),
    entry('top/pipe.crib', 'other'),
  ],
  'top/deep': [entry('top/deep/b.crib', 'file')],
  'top/.git': [entry('top/.git/c.crib', 'file')],
  'top/node_modules': [entry('top/node_modules/d.crib', 'file')],
};
const where: Folders = {
  async list(folder) {
    const entries = tree[folder];
    if (entries === undefined) throw new Error(`${folder} is closed`);
    return entries;
  },
  async follow(link) {
    if (link.includes('broken')) throw new Error('leads nowhere');
    return link.includes('far') ? 'outside' : 'file';
  },
};

it('finds plan files, links to them too, and says what it could not look at', async () => {
  expect(await planFilesIn('top', where)).toEqual({
    files: ['top/a.crib', 'top/near.crib', 'top/deep/b.crib'],
    failed: [
      { address: 'top/far.crib', why: 'outside' },
      { address: 'top/broken.crib', why: new Error('leads nowhere') },
      { address: 'top/closed', why: new Error('top/closed is closed') },
    ],
  });
});

it('stops once it has found enough', async () => {
  expect((await planFilesIn('top', where, 1)).files).toEqual(['top/a.crib']);
});

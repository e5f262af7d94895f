import { readdir, realpath, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Folders } from '../files/plan-files.js';
import { liesIn } from './plan-file.js';

/**
 * Folders of the disk, by their paths.
 *
 * @param within the folder that what a link leads to must lie in
 */
export const diskFolders = (within: string): Folders => ({
  async list(folder) {
    const entries = await readdir(folder, { withFileTypes: true });
    return entries.map((entry) => ({
      name: entry.name,
      address: join(folder, entry.name),
      kind: entry.isDirectory()
        ? 'folder'
        : entry.isFile()
          ? 'file'
          : entry.isSymbolicLink()
            ? 'link'
            : 'other',
    }));
  },
  async follow(link) {
    const real = await realpath(link);
    const about = await stat(real);
    if (about.isDirectory()) return 'other';
    if (!(await liesIn(real, within))) return 'outside';
    return about.isFile() ? 'file' : 'other';
  },
});

import { existsSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, sep } from 'node:path';

/**
 * The folder that a file's `use` lines may reach: where the command runs, if the file is in it; else the nearest
 * folder above it under version control; else its own.
 */
export function folderOf(file: string, cwd: string): string {
  const near = relative(cwd, file);
  if (near !== '' && near !== '..' && !near.startsWith(`..${sep}`) && !isAbsolute(near)) return cwd;
  const own = dirname(file);
  for (let folder = own; ; folder = dirname(folder)) {
    if (existsSync(join(folder, '.git'))) return folder;
    if (dirname(folder) === folder) return own;
  }
}

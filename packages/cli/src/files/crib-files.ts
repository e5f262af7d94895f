import { realpathSync, statSync } from 'node:fs';
import { isAbsolute, join, relative, resolve, sep } from 'node:path';
import { type Phrase, term } from '@cribwright/messages';
import { diskFolders, type Folders, planFilesIn } from '@cribwright/server';
import { folderOf } from './folder-of.js';
import { systemWords, unreadableWords } from './unreadable-words.js';

export interface Found {
  /** Absolute paths of plan files, sorted, each once. */
  readonly files: readonly FoundFile[];
  /** What could not be looked at, and why: it is passed over, and the run does not end well. */
  readonly missing: readonly Missing[];
}

export interface FoundFile {
  readonly path: string;
  /** The folder that its real path must lie in; `undefined` for a file that was named by itself. */
  readonly within: string | undefined;
}

interface Missing {
  readonly path: string;
  readonly why: Phrase;
}

/**
 * The plan files that the paths name. A folder stands for every `.crib` file in it, at any depth; a link to a file is
 * followed where it stays inside, a link to a folder is not: it may run in circles. One bad entry stops nothing else.
 */
export async function findCribFiles(
  cwd: string,
  paths: readonly string[],
  foldersOf: (within: string) => Folders = diskFolders,
): Promise<Found> {
  const files = new Map<string, FoundFile>();
  const missing: Missing[] = [];
  for (const path of paths) {
    const full = resolve(cwd, path);
    try {
      const stat = statSync(full, { throwIfNoEntry: false });
      if (stat === undefined) missing.push({ path, why: unreadableWords.gone });
      else if (!stat.isDirectory()) files.set(full, { path: full, within: undefined });
      else {
        const within = rootOf(full, cwd);
        const inside = await planFilesIn(full, foldersOf(within));
        for (const { address, why } of inside.failed)
          missing.push({
            path: shortPath(cwd, address),
            why: why === 'outside' ? unreadableWords.outside : systemWords(why),
          });
        if (inside.files.length + inside.failed.length === 0)
          missing.push({ path, why: term('cli.no-plan-file') });
        for (const file of inside.files) if (!files.has(file)) files.set(file, { path: file, within });
      }
    } catch (error) {
      missing.push({ path, why: systemWords(error) });
    }
  }
  return { files: [...files.values()].sort((a, b) => (a.path < b.path ? -1 : 1)), missing };
}

/** What the links in a folder may reach. A folder that was named by itself is taken where it really is. */
const rootOf = (folder: string, cwd: string): string =>
  folderOf(join(realpathSync(folder), 'any.crib'), realpathSync(cwd));

/** Whether a path lies outside a folder. */
const isOutside = (folder: string, path: string): boolean => {
  const way = relative(folder, path);
  return way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way);
};

/** The path a person would type from where they stand, with forward slashes. */
export function shortPath(cwd: string, path: string): string {
  const near = relative(cwd, path);
  const short = near === '' || isOutside(cwd, path) ? path : near;
  return short.split(sep).join('/');
}

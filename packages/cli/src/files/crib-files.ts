import { type Dirent, readdirSync, realpathSync, statSync } from 'node:fs';
import { isAbsolute, join, relative, resolve, sep } from 'node:path';
import { type Phrase, term } from '@cribwright/messages';
import { isPlanFile, passedOver } from '@cribwright/server';
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

/** Lists a folder. A test hands in one that fails. */
export type ListFolder = (folder: string) => readonly Dirent[];
const listFolder: ListFolder = (folder) => readdirSync(folder, { withFileTypes: true });

/**
 * The plan files that the paths name. A folder stands for every `.crib` file in it, at any depth; a link to a file is
 * followed where it stays inside, a link to a folder is not: it may run in circles. One bad entry stops nothing else.
 */
export function findCribFiles(cwd: string, paths: readonly string[], list: ListFolder = listFolder): Found {
  const files = new Map<string, FoundFile>();
  const missing: Missing[] = [];
  for (const path of paths) {
    const full = resolve(cwd, path);
    try {
      const stat = statSync(full, { throwIfNoEntry: false });
      if (stat === undefined) missing.push({ path, why: unreadableWords.gone });
      else if (!stat.isDirectory()) files.set(full, { path: full, within: undefined });
      else {
        const inside = cribFilesIn(full, rootOf(full, cwd), cwd, list);
        missing.push(...inside.missing);
        if (inside.files.length + inside.missing.length === 0)
          missing.push({ path, why: term('cli.no-plan-file') });
        for (const file of inside.files) if (!files.has(file.path)) files.set(file.path, file);
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

function cribFilesIn(folder: string, within: string, cwd: string, list: ListFolder): Found {
  const files: FoundFile[] = [];
  const missing: Missing[] = [];
  const add = (found: Found): void => {
    files.push(...found.files);
    missing.push(...found.missing);
  };
  let entries: readonly Dirent[];
  try {
    entries = list(folder);
  } catch (error) {
    return { files, missing: [{ path: shortPath(cwd, folder), why: systemWords(error) }] };
  }
  for (const entry of entries) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) {
      if (!passedOver(entry.name)) add(cribFilesIn(path, within, cwd, list));
    } else if (isPlanFile(entry.name)) add(planAt(path, entry, within, cwd));
  }
  return { files, missing };
}

/** A plan file, or a link to one inside the folder. A link to a folder is left out. */
function planAt(path: string, entry: Dirent, within: string, cwd: string): Found {
  const bad = (why: Phrase): Found => ({ files: [], missing: [{ path: shortPath(cwd, path), why }] });
  try {
    if (entry.isSymbolicLink()) {
      const real = realpathSync(path);
      if (statSync(real).isDirectory()) return { files: [], missing: [] };
      if (isOutside(realpathSync(within), real)) return bad(unreadableWords.outside);
    } else if (!entry.isFile()) return { files: [], missing: [] };
    return { files: [{ path, within }], missing: [] };
  } catch (error) {
    return bad(systemWords(error));
  }
}

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

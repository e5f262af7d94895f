import { readdirSync, statSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { isPlanFile, passedOver } from '@cribwright/language';

export interface Found {
  /** Absolute paths of plan files, sorted, each once. */
  readonly files: readonly string[];
  readonly missing: readonly { readonly path: string; readonly why: string }[];
}

/**
 * The plan files that the paths name. A folder stands for every `.crib` file in it, at any depth; a link to a file is
 * followed, a link to a folder is not: it may run in circles.
 */
export function findCribFiles(cwd: string, paths: readonly string[]): Found {
  const files = new Set<string>();
  const missing: { path: string; why: string }[] = [];
  for (const path of paths) {
    const full = resolve(cwd, path);
    const stat = statSync(full, { throwIfNoEntry: false });
    if (stat === undefined) missing.push({ path, why: 'there is no such file or folder' });
    else if (!stat.isDirectory()) files.add(full);
    else {
      const inside = cribFilesIn(full);
      if (inside.length === 0) missing.push({ path, why: 'no .crib file is in it' });
      for (const file of inside) files.add(file);
    }
  }
  return { files: [...files].sort(), missing };
}

function cribFilesIn(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return passedOver(entry.name) ? [] : cribFilesIn(path);
    if (!isPlanFile(entry.name)) return [];
    return entry.isFile() || (entry.isSymbolicLink() && leadsToFile(path)) ? [path] : [];
  });
}

/** One that leads nowhere too, so that its reader says so. */
const leadsToFile = (link: string): boolean =>
  statSync(link, { throwIfNoEntry: false })?.isDirectory() !== true;

/** The path a person would type from where they stand, with forward slashes. */
export function shortPath(cwd: string, path: string): string {
  const near = relative(cwd, path);
  const short = near === '' || near.startsWith('..') ? path : near;
  return short.split(sep).join('/');
}

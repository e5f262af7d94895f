import { readdir, realpath, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { URI } from 'vscode-uri';
import { type Files, isPlanFile, passedOver } from './files.js';
import { liesIn, readPlanFile } from './plan-file.js';

/**
 * Files on the disk; other schemes go to `others`. Links to files are followed where they lead to one in the same
 * folder; links to folders are not: they may run in circles. What cannot be listed is passed over.
 */
export function diskFiles(others: Files): Files {
  return {
    async read(uri, within) {
      const { scheme, fsPath } = URI.parse(uri);
      if (scheme !== 'file') return others.read(uri, within);
      return readPlanFile(fsPath, within === undefined ? undefined : URI.parse(within).fsPath);
    },
    async list(folder, limit) {
      const { scheme, fsPath } = URI.parse(folder);
      if (scheme !== 'file') return others.list(folder, limit);
      const found: string[] = [];
      const folders = [fsPath];
      for (let next = folders.shift(); next !== undefined && found.length < limit; next = folders.shift()) {
        const entries = await readdir(next, { withFileTypes: true }).catch(() => []);
        for (const entry of entries) {
          const path = join(next, entry.name);
          if (entry.isDirectory() && !passedOver(entry.name)) folders.push(path);
          if (!isPlanFile(entry.name) || found.length >= limit) continue;
          if (entry.isFile() || (entry.isSymbolicLink() && (await leadsToFile(path, fsPath))))
            found.push(URI.file(path).toString());
        }
      }
      return found;
    },
  };
}

async function leadsToFile(link: string, folder: string): Promise<boolean> {
  try {
    const real = await realpath(link);
    return (await stat(real)).isFile() && (await liesIn(real, folder));
  } catch {
    return false;
  }
}

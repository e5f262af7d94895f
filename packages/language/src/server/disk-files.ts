import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { URI } from 'vscode-uri';
import { type Files, isPlanFile, passedOver } from './files.js';

/** Larger files are no plans, and are not read. */
const mostBytes = 4 * 1024 * 1024;

/** Files on the disk; other schemes go to `others`. Links to files are followed; links to folders are not: they may run in circles. */
export function diskFiles(others: Files): Files {
  return {
    async read(uri) {
      const { scheme, fsPath } = URI.parse(uri);
      if (scheme !== 'file') return others.read(uri);
      try {
        const about = await stat(fsPath);
        if (!about.isFile() || about.size > mostBytes) return undefined;
        return await readFile(fsPath, 'utf8');
      } catch {
        return undefined;
      }
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
          if (entry.isFile() || (entry.isSymbolicLink() && (await leadsToFile(path))))
            found.push(URI.file(path).toString());
        }
      }
      return found;
    },
  };
}

const leadsToFile = (link: string): Promise<boolean> =>
  stat(link).then(
    (about) => about.isFile(),
    () => false,
  );

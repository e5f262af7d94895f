import { URI } from 'vscode-uri';
import { planFilesIn } from '../files/plan-files.js';
import { diskFolders } from './disk-folders.js';
import type { Files } from './files.js';
import { readPlanFile } from './plan-file.js';

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
      const { files } = await planFilesIn(fsPath, diskFolders(fsPath), limit);
      return files.map((path) => URI.file(path).toString());
    },
  };
}

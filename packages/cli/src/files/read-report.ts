import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { lessonsIn, libraryFolder, openWorkspace, type Workspace } from '@cribwright/language';
import type { Io } from '../io.js';
import { fileReport } from '../report/file-report.js';
import type { FileReport, Report } from '../report/report.js';
import { findCribFiles, shortPath } from './crib-files.js';
import { folderOf } from './folder-of.js';
import { whyUnreadable } from './why-unreadable.js';

/** What stands for the standard input among the paths. */
export const standardInput = '-';

/** Reads and checks the files that the paths name. Never throws on what is in them. */
export async function readReport(io: Io, paths: readonly string[]): Promise<Report> {
  const named = findCribFiles(
    io.cwd,
    paths.filter((p) => p !== standardInput),
  );
  const folders = [...new Set([io.cwd, ...named.files.map((f) => folderOf(f, io.cwd))])];
  const workspace = openWorkspace({
    files: { read: readText },
    folders: folders.map((f) => pathToFileURL(f).href),
    today: io.today,
    push: true,
  });
  const unreadable = [...named.missing];
  const files: FileReport[] = [];
  if (paths.includes(standardInput)) {
    const uri = pathToFileURL(join(io.cwd, 'standard-input.crib')).href;
    workspace.put(uri, await io.stdin(), 1);
    files.push(await reportOn(uri, workspace, io));
  }
  for (const path of named.files) {
    const why = whyUnreadable(path);
    if (why !== undefined) unreadable.push({ path: shortPath(io.cwd, path), why });
    else files.push(await reportOn(pathToFileURL(path).href, workspace, io));
  }
  return { files, unreadable };
}

async function reportOn(uri: string, workspace: Workspace, io: Io): Promise<FileReport> {
  await workspace.load(uri);
  const checked = workspace.check(uri);
  const bound = workspace.bound(uri);
  return {
    ...fileReport(checked, {
      pathOf: pathsFrom(io.cwd),
      textOf: (other) => workspace.bound(other)?.text ?? '',
    }),
    lessons: bound === undefined ? [] : lessonsIn(bound, checked.plans),
  };
}

/** Gives the path of an address, `library/timber.crib` for a bundled file; worked out once, asked for at every place. */
function pathsFrom(cwd: string): (uri: string) => string {
  const known = new Map<string, string>();
  return (uri) => {
    const path = known.get(uri) ?? pathOf(uri, cwd);
    known.set(uri, path);
    return path;
  };
}

const pathOf = (uri: string, cwd: string): string =>
  uri.startsWith(libraryFolder)
    ? `library/${uri.slice(libraryFolder.length)}`
    : shortPath(cwd, fileURLToPath(uri));

async function readText(uri: string): Promise<string | undefined> {
  const path = fileURLToPath(uri);
  return whyUnreadable(path) === undefined ? await readFile(path, 'utf8') : undefined;
}

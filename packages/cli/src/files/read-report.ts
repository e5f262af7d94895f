import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { term } from '@cribwright/messages';
import { readPlanFile } from '@cribwright/server';
import { lessonsIn, libraryFolder, openWorkspace, type Workspace } from '@cribwright/workspace';
import { fileReport } from '../report/file-report.js';
import type { CheckReport, FileReport } from '../report/report.js';
import type { Io } from '../terminal/io.js';
import { findCribFiles, shortPath } from './crib-files.js';
import { folderOf } from './folder-of.js';
import { readText } from './read-text.js';
import { unreadableWords } from './unreadable-words.js';

/** What stands for the standard input among the paths. */
export const standardInput = '-';

/** Reads and checks the files that the paths name. Never throws on what is in them. */
export async function readReport(io: Io, paths: readonly string[]): Promise<CheckReport> {
  const named = await findCribFiles(
    io.cwd,
    paths.filter((p) => p !== standardInput),
  );
  const folders = [...new Set([io.cwd, ...named.files.map((f) => folderOf(f.path, io.cwd))])];
  const workspace = openWorkspace({
    files: {
      read: readText,
      list: async () => named.files.map(({ path }) => pathToFileURL(path).href),
    },
    folders: folders.map((f) => pathToFileURL(f).href),
    today: io.today,
    push: true,
  });
  const unreadable = [...named.missing];
  const files: FileReport[] = [];
  if (paths.includes(standardInput)) {
    const uri = pathToFileURL(join(io.cwd, 'standard-input.crib')).href;
    const text = await io.stdin();
    if (text.trim() === '') unreadable.push({ path: standardInput, why: term('cli.input-empty') });
    else {
      workspace.put(uri, text, 1);
      files.push(await reportOn(uri, workspace, io));
    }
  }
  for (const { path, within } of named.files) {
    const text = await readPlanFile(path, within);
    if (typeof text === 'string') {
      const uri = pathToFileURL(path).href;
      workspace.put(uri, text, 1);
      files.push(await reportOn(uri, workspace, io));
    } else
      unreadable.push({ path: shortPath(io.cwd, path), why: unreadableWords[text?.unreadable ?? 'gone'] });
  }
  return { files, unreadable: [...unreadable, ...withoutPlan(paths, files, unreadable)] };
}

/** Files without a plan are well where others have one. Where none has, nothing was checked at all. */
function withoutPlan(
  paths: readonly string[],
  files: readonly FileReport[],
  unreadable: CheckReport['unreadable'],
): CheckReport['unreadable'] {
  const said =
    unreadable.length > 0 ||
    files.some((f) => f.plans.length > 0 || f.problems.some((p) => p.severity === 'danger'));
  return said ? [] : [{ path: paths.join(' '), why: term('cli.no-plan') }];
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

import { existsSync, realpathSync, statSync } from 'node:fs';
import { resolve, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { type Phrase, term } from '@cribwright/messages';
import { readPlanFile } from '@cribwright/server';
import {
  type FileSource,
  openWorkspace,
  type Version,
  type VersionFile,
  type Workspace,
} from '@cribwright/workspace';
import { findCribFiles, shortPath } from '../files/crib-files.js';
import { folderOf } from '../files/folder-of.js';
import { readText } from '../files/read-text.js';
import { unreadableWords } from '../files/unreadable-words.js';
import type { Io } from '../terminal/io.js';
import { type GitRevision, type NoRevision, pathBelow, readRevision } from './git-revision.js';

/** One side of a comparison, and what of it could not be read. */
export interface ReadVersion {
  readonly version: Version;
  readonly unreadable: readonly { readonly path: string; readonly why: Phrase }[];
}

/** What was named on the command line: a file or folder, or a revision of git. */
export type Side =
  | { readonly kind: 'file' | 'folder'; readonly path: string }
  | { readonly kind: 'revision'; readonly revision: GitRevision };

const whyNot: Readonly<Record<NoRevision, Phrase>> = {
  'no git': term('compare.no-git'),
  'no repository': term('compare.no-repository'),
  'no revision': term('compare.no-revision'),
  failed: term('compare.git-failed'),
};

/** A file or folder of that name, else a revision of that name; else why it is neither. */
export function sideOf(cwd: string, named: string): Side | Phrase {
  const path = resolve(cwd, named);
  if (existsSync(path)) return { kind: statSync(path).isDirectory() ? 'folder' : 'file', path };
  const revision = readRevision(cwd, named);
  return typeof revision === 'string' ? whyNot[revision] : { kind: 'revision', revision };
}

/**
 * Reads both sides, and checks each plan whose text, or the text of something that it uses, differs. The others come
 * to the same on both sides, so that a change in a large repository costs its own plans alone.
 *
 * @param within the folder whose plans a revision is asked for
 */
export async function readSides(
  io: Io,
  sides: readonly [Side, Side],
  within: string,
): Promise<readonly [ReadVersion, ReadVersion]> {
  const [old, now] = [await readSide(io, sides[0], within), await readSide(io, sides[1], within)];
  const known = new Map(old.files.map((f) => [f.path, f.texts]));
  const same = new Set(now.files.filter((f) => known.get(f.path) === f.texts).map((f) => f.path));
  return [checked(old, same), checked(now, same)];
}

const checked = ({ files, unreadable, workspace }: LoadedSide, same: ReadonlySet<string>): ReadVersion => ({
  version: {
    files: files.map(({ path, bound }) => ({
      path,
      bound,
      plans: same.has(path) ? [] : workspace.check(bound.uri).plans,
    })),
  },
  unreadable,
});

/** One side, read and not yet checked. */
interface LoadedSide {
  readonly files: readonly (Omit<VersionFile, 'plans'> & {
    /** Its own text and those of all that it uses. */
    readonly texts: string;
  })[];
  readonly unreadable: ReadVersion['unreadable'];
  readonly workspace: Workspace;
}

const readSide = (io: Io, side: Side, within: string): Promise<LoadedSide> =>
  side.kind === 'revision' ? readGit(io, side.revision, within) : readDisk(io, side.path);

/** Paths are relative to the folder; those of a file that was named by itself are empty, whatever it is called. */
async function readDisk(io: Io, path: string): Promise<LoadedSide> {
  const found = await findCribFiles(io.cwd, [path]);
  const isFile = existsSync(path) && statSync(path).isFile();
  const base = isFile ? path : realpathSync(path);
  const texts = new Map<string, string>();
  const unreadable = [...found.missing];
  for (const file of found.files) {
    const text = await readPlanFile(file.path, file.within);
    if (typeof text === 'string') texts.set(file.path, text);
    else
      unreadable.push({
        path: shortPath(io.cwd, file.path),
        why: unreadableWords[text?.unreadable ?? 'gone'],
      });
  }
  const loaded = await load(io, {
    texts,
    folders: [...new Set([io.cwd, ...found.files.map((f) => folderOf(f.path, io.cwd))])],
    read: readText,
    shownAs: (file) => (isFile ? '' : (pathBelow(base, file) ?? file)),
  });
  return { ...loaded, unreadable };
}

async function readGit(io: Io, { root, texts: all }: GitRevision, within: string): Promise<LoadedSide> {
  const full = (path: string): string => resolve(root, path.split('/').join(sep));
  const inside = [...all].filter(([path]) => pathBelow(within, full(path)) !== undefined);
  const texts = new Map<string, string>();
  const unreadable: ReadVersion['unreadable'][number][] = [];
  for (const [path, text] of inside) {
    if (text === undefined) unreadable.push({ path, why: unreadableWords['not text'] });
    else texts.set(full(path), text);
  }
  const loaded = await load(io, {
    texts,
    folders: [root],
    read: async (uri) => {
      const path = pathBelow(root, fileURLToPath(uri));
      if (path === undefined || !all.has(path)) return undefined;
      return all.get(path) ?? { unreadable: 'not text' };
    },
    shownAs: (file) => pathBelow(within, file) ?? file,
  });
  return { ...loaded, unreadable };
}

interface Texts {
  /** By absolute paths. */
  readonly texts: ReadonlyMap<string, string>;
  readonly folders: readonly string[];
  readonly read: FileSource['read'];
  readonly shownAs: (path: string) => string;
}

async function load(
  io: Io,
  { texts, folders, read, shownAs }: Texts,
): Promise<Omit<LoadedSide, 'unreadable'>> {
  const workspace = openWorkspace({
    files: { read, list: async () => [...texts.keys()].map((path) => pathToFileURL(path).href) },
    folders: folders.map((f) => pathToFileURL(f).href),
    today: io.today,
    push: true,
  });
  const paths = new Map([...texts.keys()].map((path) => [pathToFileURL(path).href, shownAs(path)]));
  for (const [path, text] of texts) workspace.put(pathToFileURL(path).href, text, 1);
  const files: LoadedSide['files'][number][] = [];
  for (const [uri, path] of paths) {
    await workspace.load(uri);
    const bound = workspace.bound(uri);
    if (bound === undefined) continue;
    files.push({ path, bound, texts: textsOf(uri, workspace, (used) => paths.get(used) ?? used) });
  }
  return { files, workspace };
}

/** The texts that a file is made of, each with its path: equal texts make equal plans. */
function textsOf(uri: string, workspace: Workspace, pathOf: (uri: string) => string): string {
  const texts = new Map<string, string>();
  const add = (from: string): void => {
    const bound = workspace.bound(from);
    if (texts.has(from)) return;
    texts.set(from, `${pathOf(from)}\n${bound?.text ?? ''}`);
    for (const { target } of bound?.uses ?? []) if (target !== undefined) add(target);
  };
  add(uri);
  return [...texts.values()].join('\0');
}

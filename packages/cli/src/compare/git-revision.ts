import { spawnSync } from 'node:child_process';
import { relative, sep } from 'node:path';

/** The plan files of a revision. */
export interface GitRevision {
  /** Top folder of the repository, absolute. */
  readonly root: string;
  /** Texts by their paths below the top folder, with `/`; `undefined` for a file that is not text. */
  readonly texts: ReadonlyMap<string, string | undefined>;
}

/** Why a revision could not be read. */
export type NoRevision = 'no git' | 'no repository' | 'no revision' | 'failed';

/** Room for the texts of a large repository. */
const most = 512 * 1024 * 1024;

/** Reads every plan file of a revision: a branch, a tag, a commit. Runs `git` and changes nothing. */
export function readRevision(cwd: string, revision: string): GitRevision | NoRevision {
  const top = git(cwd, ['rev-parse', '--show-toplevel']);
  if (top === 'no git') return 'no git';
  if (top === 'failed') return 'no repository';
  const root = top.toString('utf8').trim();
  const commit = git(cwd, ['rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`]);
  if (commit === 'no git' || commit === 'failed') return 'no revision';
  const hash = commit.toString('utf8').trim();
  const listed = git(root, ['ls-tree', '-r', '-z', '--full-tree', hash]);
  if (listed === 'no git' || listed === 'failed') return 'failed';
  const entries = listed.toString('utf8').split('\0').flatMap(entryOf);
  const contents = git(root, ['cat-file', '--batch'], entries.map((e) => `${e.blob}\n`).join(''));
  if (contents === 'no git' || contents === 'failed') return 'failed';
  const blobs = batch(contents);
  return { root, texts: new Map(entries.map((e, i) => [e.path, blobs[i]])) };
}

/** `100644 blob <hash>\t<path>`. A link is not followed: what it leads to may lie outside. */
function entryOf(line: string): readonly { readonly blob: string; readonly path: string }[] {
  const [, mode, blob, path] = /^(\d+) blob ([0-9a-f]+)\t(.+)$/s.exec(line) ?? [];
  if (mode === undefined || blob === undefined || path === undefined) return [];
  return mode !== '120000' && path.endsWith('.crib') ? [{ blob, path }] : [];
}

/** What `git cat-file --batch` prints: a head `<hash> blob <size>` before each content, a line break after it. */
function batch(out: Buffer): readonly (string | undefined)[] {
  const texts: (string | undefined)[] = [];
  for (let at = 0; at < out.length; ) {
    const end = out.indexOf(0x0a, at);
    if (end < 0) break;
    const size = Number(out.toString('utf8', at, end).split(' ')[2] ?? 0);
    texts.push(textOf(out.subarray(end + 1, end + 1 + size)));
    at = end + 1 + size + 1;
  }
  return texts;
}

const textOf = (content: Buffer): string | undefined => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(content);
  } catch {
    return undefined;
  }
};

function git(cwd: string, args: readonly string[], input?: string): Buffer | 'no git' | 'failed' {
  const { status, stdout, error } = spawnSync('git', args, {
    cwd,
    maxBuffer: most,
    ...(input === undefined ? {} : { input }),
  });
  if (error !== undefined && 'code' in error && error.code === 'ENOENT') return 'no git';
  return status === 0 ? stdout : 'failed';
}

/** A path below a folder, as repositories write paths; `undefined` where it lies outside. */
export function pathBelow(root: string, path: string): string | undefined {
  const near = relative(root, path);
  return near === '..' || near.startsWith(`..${sep}`) ? undefined : near.split(sep).join('/');
}

import { library } from '@cribwright/language';
import { URI, Utils } from 'vscode-uri';

/** Where texts come from: disk, the editor's client, or a table in a test. */
export interface FileSource {
  /** @param within the folder that its real path must lie in, links followed; a source without links has no use for it */
  read(uri: string, within?: string): Promise<FileText>;
  /** Plan files in a folder, at most so many: of these a path that leads nowhere may have meant one. */
  list?(folder: string, limit: number): Promise<readonly string[]>;
}

/** A file that is there and is not read, and why. */
export interface Unreadable {
  readonly unreadable:
    | 'outside'
    | 'not a file'
    | 'not text'
    | 'too large'
    | 'looping link'
    | 'not permitted'
    | 'failed';
}

/** The text of a file; `undefined` where there is no such file. */
export type FileText = string | undefined | Unreadable;

/** Where the bundled library is seen to be. Its files are read-only. */
export const libraryFolder = 'cribwright:/library/';
/** The address of a file of the bundled library. */
export const libraryUri = (name: string): string => `${libraryFolder}${name}`;
/** The text of a file of the bundled library. `undefined` for any other address. */
export const libraryText = (uri: string): string | undefined =>
  uri.startsWith(libraryFolder) ? library[uri.slice(libraryFolder.length)] : undefined;

/** Library files whose names are always in scope. */
export const prelude = ['timber.crib', 'species.crib', 'surfaces.crib', 'ties.crib', 'policy.crib'];

export type Resolved =
  | { readonly kind: 'candidates'; readonly uris: readonly string[] }
  | { readonly kind: 'outside' }
  | { readonly kind: 'half a character' }
  | { readonly kind: 'not crib' };

/**
 * Files that a `use` path may mean, best first: beside the file, then in each folder above it up to the opened
 * folder. Never outside it: a path that climbs out, or names a place of its own, is refused.
 */
export function resolveUse(from: string, path: string, folders: readonly string[]): Resolved {
  if (!path.endsWith('.crib')) return { kind: 'not crib' };
  // Half of a surrogate pair cannot stand in an address.
  if (/\p{Cs}/u.test(path)) return { kind: 'half a character' };
  if (path.startsWith('library/'))
    return { kind: 'candidates', uris: [libraryUri(path.slice('library/'.length))] };
  if (/^[a-z][a-z0-9+.-]*:|^[/\\]/i.test(path) || path.includes('\\') || from.startsWith(libraryFolder)) {
    return { kind: 'outside' };
  }
  const own = Utils.dirname(URI.parse(from));
  const root = URI.parse(rootOf(from, folders));
  const uris: string[] = [];
  for (let folder = own; ; folder = Utils.dirname(folder)) {
    const uri = Utils.joinPath(folder, path);
    if (holds(root, uri)) uris.push(uri.toString());
    if (folder.path === root.path || folder.path.length <= root.path.length || folder.path === '/') break;
  }
  return uris.length === 0 ? { kind: 'outside' } : { kind: 'candidates', uris };
}

/** The folder that what a file uses must lie in: the opened one that it is in, else its own. */
export function rootOf(uri: string, folders: readonly string[]): string {
  const own = Utils.dirname(URI.parse(uri));
  return folders.find((f) => holds(URI.parse(f), own)) ?? own.toString();
}

const holds = (folder: URI, uri: URI): boolean => {
  const base = folder.path.endsWith('/') ? folder.path : `${folder.path}/`;
  return (
    folder.scheme === uri.scheme && folder.authority === uri.authority && `${uri.path}/`.startsWith(base)
  );
};

/** A part of an address as a person writes it. One that is not escaped right is taken as it stands. */
export function unescaped(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** The last part of a file's path. */
export const fileName = (uri: string): string => unescaped(uri.slice(uri.lastIndexOf('/') + 1));

/** A file as a `use` line of another names it: beside it, or below a folder that both lie in. */
export function pathFrom(from: string, uri: string): string {
  const [own, other] = [from.split('/'), uri.split('/')];
  let same = 0;
  while (same < own.length - 1 && own[same] === other[same]) same++;
  return other.slice(same).map(fileName).join('/');
}

import { URI, Utils } from 'vscode-uri';
import { library } from '../generated/library.js';

/** Where texts come from: disk, the editor's client, or a table in a test. */
export interface FileSource {
  /** `undefined` where there is no such file. */
  read(uri: string): Promise<string | undefined>;
}

/** Where the bundled library is seen to be. Its files are read-only. */
export const libraryFolder = 'cribwright:/library/';
export const libraryUri = (name: string): string => `${libraryFolder}${name}`;
export const libraryText = (uri: string): string | undefined =>
  uri.startsWith(libraryFolder) ? library[uri.slice(libraryFolder.length)] : undefined;

/** Library files whose names are always in scope. */
export const prelude = ['timber.crib', 'species.crib', 'surfaces.crib', 'ties.crib', 'policy.crib'];

export type Resolved =
  | { readonly kind: 'candidates'; readonly uris: readonly string[] }
  | { readonly kind: 'outside' }
  | { readonly kind: 'not crib' };

/**
 * Files that a `use` path may mean, best first: beside the file, then in each folder above it up to the opened
 * folder. Never outside it: a path that climbs out, or names a place of its own, is refused.
 */
export function resolveUse(from: string, path: string, folders: readonly string[]): Resolved {
  if (!path.endsWith('.crib')) return { kind: 'not crib' };
  if (path.startsWith('library/'))
    return { kind: 'candidates', uris: [libraryUri(path.slice('library/'.length))] };
  if (/^[a-z][a-z0-9+.-]*:|^[/\\]/i.test(path) || path.includes('\\') || from.startsWith(libraryFolder)) {
    return { kind: 'outside' };
  }
  const own = Utils.dirname(URI.parse(from));
  const root = folders.map((f) => URI.parse(f)).find((f) => holds(f, own)) ?? own;
  const uris: string[] = [];
  for (let folder = own; ; folder = Utils.dirname(folder)) {
    const uri = Utils.joinPath(folder, path);
    if (holds(root, uri)) uris.push(uri.toString());
    if (folder.path === root.path || folder.path.length <= root.path.length || folder.path === '/') break;
  }
  return uris.length === 0 ? { kind: 'outside' } : { kind: 'candidates', uris };
}

const holds = (folder: URI, uri: URI): boolean => {
  const base = folder.path.endsWith('/') ? folder.path : `${folder.path}/`;
  return (
    folder.scheme === uri.scheme && folder.authority === uri.authority && `${uri.path}/`.startsWith(base)
  );
};

/** The last part of a file's path. */
export function fileName(uri: string): string {
  const last = uri.slice(uri.lastIndexOf('/') + 1);
  return /%(?![0-9a-f]{2})/i.test(last) ? last : decodeURIComponent(last);
}

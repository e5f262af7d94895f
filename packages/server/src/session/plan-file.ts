import { constants } from 'node:fs';
import { open, realpath, stat } from 'node:fs/promises';
import { isAbsolute, relative, sep } from 'node:path';
import type { FileText, Unreadable } from '@cribwright/workspace';

/** Bytes. Larger files are no plans, and are not read. */
export const mostBytes = 4 * 1024 * 1024;

/**
 * The text of a file on the disk, where its real path lies in a folder: links are followed, and never out of it.
 * What is no file, such as a device or a pipe, is never opened: it may go on without end.
 *
 * @param path absolute
 * @param within absolute; left out, the file may lie anywhere
 * @returns `undefined` where nothing is there. Never throws.
 */
export async function readPlanFile(path: string, within?: string): Promise<FileText> {
  try {
    const real = await realpath(path);
    if (within !== undefined && !(await liesIn(real, within))) return { unreadable: 'outside' };
    const about = await stat(real);
    if (!about.isFile()) return { unreadable: 'not a file' };
    if (about.size > mostBytes) return { unreadable: 'too large' };
    // A link that was put there meanwhile is not followed.
    const file = await open(real, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0));
    try {
      return decodePlan(await file.readFile());
    } finally {
      await file.close();
    }
  } catch (error) {
    const code = codeOf(error);
    return nothingThere.has(code) ? undefined : { unreadable: reasons[code] ?? 'failed' };
  }
}

/** Whether a real path lies in a folder, the folder's own links followed. */
export async function liesIn(real: string, folder: string): Promise<boolean> {
  const way = relative(await realpath(folder), real);
  return way !== '' && way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

/** UTF-8 alone, and no NUL: anything else is not text, or text in another encoding. */
export function decodePlan(bytes: Uint8Array): string | Unreadable {
  if (bytes.includes(0)) return { unreadable: 'not text' };
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return { unreadable: 'not text' };
  }
}

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error ? String(error.code) : '';

const nothingThere: ReadonlySet<string> = new Set([
  'ENOENT',
  'ENOTDIR',
  'ENAMETOOLONG',
  'ERR_INVALID_ARG_VALUE',
]);

const reasons: Readonly<Record<string, Unreadable['unreadable']>> = {
  ELOOP: 'looping link',
  EACCES: 'not permitted',
  EPERM: 'not permitted',
};

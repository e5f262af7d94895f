import { accessSync, constants, statSync } from 'node:fs';

/** Larger files are no plans. The language server passes them over too. */
const mostBytes = 4 * 1024 * 1024;

/**
 * Why a path cannot be read as a plan, `undefined` where it can. What is no file is never opened: a device or a pipe
 * may go on without end, also behind a link that a plan uses.
 */
export function whyUnreadable(path: string): string | undefined {
  try {
    const about = statSync(path);
    if (!about.isFile()) return 'it is no file';
    if (about.size > mostBytes) return 'it is larger than 4 MB, so it is no plan';
    accessSync(path, constants.R_OK);
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

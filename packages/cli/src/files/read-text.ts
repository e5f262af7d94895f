import { fileURLToPath } from 'node:url';
import { readPlanFile } from '@cribwright/server';
import type { FileSource } from '@cribwright/workspace';

/** Reads a file of the disk for a workspace. */
export const readText: FileSource['read'] = (uri, within) =>
  readPlanFile(fileURLToPath(uri), within === undefined ? undefined : fileURLToPath(within));

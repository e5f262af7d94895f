import type { Io } from '../io.js';
import type { Report } from '../report/report.js';
import { findCribFiles, shortPath } from './crib-files.js';

/** Reads and checks the files that the paths name. */
export async function readReport(io: Io, paths: readonly string[]): Promise<Report> {
  const found = findCribFiles(io.cwd, paths);
  const waiting = found.files.map((f) => ({
    path: shortPath(io.cwd, f),
    why: 'plans cannot be read yet in this build',
  }));
  return { files: [], unreadable: [...found.missing, ...waiting] };
}

import type { FileSource } from '@cribwright/workspace';

/** Where the server reads files from. Never throws. */
export interface Files extends FileSource {
  /** The plan files under a folder whose real paths lie in it too, at most `limit` of them. */
  list(folder: string, limit: number): Promise<readonly string[]>;
}

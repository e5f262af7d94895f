/** Where the server reads files from. Never throws: a file that cannot be read is `undefined`. */
export interface Files {
  read(uri: string): Promise<string | undefined>;
  /** The plan files under a folder, at most `limit` of them. */
  list(folder: string, limit: number): Promise<readonly string[]>;
}

/** Folders that hold no plans and may be huge. */
export const passedOver = (name: string): boolean => name.startsWith('.') || name === 'node_modules';

export const isPlanFile = (name: string): boolean => name.endsWith('.crib');

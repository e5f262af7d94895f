/** One entry of a folder. Addresses are paths or URIs, as whoever lists the folder has them. */
export interface FolderEntry {
  readonly name: string;
  readonly address: string;
  readonly kind: 'file' | 'folder' | 'link' | 'other';
}

/** Where folders are looked into: the disk, or a client that is asked. Either function rejects where it cannot. */
export interface Folders {
  list(folder: string): Promise<readonly FolderEntry[]>;
  /** Where a link leads: to a file that may be read, to something else, or out of what may be read. */
  follow(link: string): Promise<'file' | 'other' | 'outside'>;
}

/** What a walk through a folder found. */
export interface PlanFiles {
  /** Addresses of plan files. */
  readonly files: readonly string[];
  /** What could not be looked at, and why. The walk went on without it. */
  readonly failed: readonly { readonly address: string; readonly why: 'outside' | Error }[];
}

/** Folders that hold no plans and may be huge. */
const passedOver = (name: string): boolean => name.startsWith('.') || name === 'node_modules';

/** Whether a file holds plans, by its name. */
const isPlanFile = (name: string): boolean => name.endsWith('.crib');

/**
 * The plan files in a folder, at any depth, the near ones first. A link to a file is followed, a link to a folder is
 * not: it may run in circles. What cannot be looked at is passed over and told. Never rejects.
 *
 * @param most how many files are enough: a count
 */
export async function planFilesIn(
  top: string,
  where: Folders,
  most = Number.POSITIVE_INFINITY,
): Promise<PlanFiles> {
  const files: string[] = [];
  const failed: PlanFiles['failed'][number][] = [];
  const fail = (address: string, error: unknown): undefined => {
    failed.push({ address, why: error instanceof Error ? error : new Error(String(error)) });
  };
  const folders = [top];
  for (let next = folders.shift(); next !== undefined && files.length < most; next = folders.shift()) {
    const folder = next;
    const entries = await where.list(folder).catch((error: unknown) => fail(folder, error));
    for (const { name, address, kind } of entries ?? []) {
      if (kind === 'folder' && !passedOver(name)) folders.push(address);
      if (!isPlanFile(name) || files.length >= most) continue;
      const leads =
        kind === 'link' ? await where.follow(address).catch((error: unknown) => fail(address, error)) : kind;
      if (leads === 'file') files.push(address);
      if (leads === 'outside') failed.push({ address, why: leads });
    }
  }
  return { files, failed };
}

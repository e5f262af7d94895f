import type { Checked } from './checked.js';
import type { FileSource } from './files.js';
import { openWorkspace } from './open-workspace.js';
import type { WorkspaceOptions } from './workspace.js';

/** How `checkText` reads and checks. */
export interface CheckTextOptions extends Omit<WorkspaceOptions, 'files' | 'folders'> {
  /** Address of the text. Files that its `use` lines name are looked for beside it. */
  readonly uri?: string;
  /** Where files that it uses come from. Without it there are none beside the bundled library. */
  readonly files?: FileSource;
}

const noFiles: FileSource = { read: async () => undefined };

/**
 * Reads the plans of one text and checks them, with the bundled library at hand. Never throws on a text, however
 * wrong: what could not be read stands in `problems`, and a plan that was not read whole is marked `partial`.
 *
 * @param text a whole `.crib` file
 */
export async function checkText(text: string, options: CheckTextOptions = {}): Promise<Checked> {
  const { uri = 'file:///plan.crib', files = noFiles, ...rest } = options;
  const workspace = openWorkspace({ files, folders: [], ...rest });
  workspace.put(uri, text, 1);
  await workspace.load(uri);
  return workspace.check(uri);
}

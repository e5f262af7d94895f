import { LoadedFiles } from './loaded-files.js';
import type { Workspace, WorkspaceOptions } from './workspace.js';

/** Opens a workspace. Nothing is read before it is asked for. */
export function openWorkspace(options: WorkspaceOptions): Workspace {
  return new LoadedFiles(options);
}

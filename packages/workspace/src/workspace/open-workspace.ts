import { LoadedFiles } from './loaded-files.js';
import type { Workspace, WorkspaceOptions } from './workspace.js';

export function openWorkspace(options: WorkspaceOptions): Workspace {
  return new LoadedFiles(options);
}

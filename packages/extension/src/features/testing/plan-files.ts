import { planFilesIn } from '@cribwright/server/protocol';
import * as vscode from 'vscode';
import { entriesOf } from '../../session/entries-of.js';

const most = 2000;

/**
 * The plan files of the workspace, up to 2,000. Walks the folders itself: a virtual workspace in a browser has
 * no file search.
 */
export async function planFiles(): Promise<readonly vscode.Uri[]> {
  const found: string[] = [];
  for (const { uri } of vscode.workspace.workspaceFolders ?? []) {
    const list = async (folder: string) => await entriesOf(vscode.Uri.parse(folder));
    const { files } = await planFilesIn(
      uri.toString(),
      { list, follow: async () => 'other' },
      most - found.length,
    );
    found.push(...files);
  }
  return found.map((uri) => vscode.Uri.parse(uri));
}

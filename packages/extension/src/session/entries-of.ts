import * as vscode from 'vscode';

/**
 * What a folder holds. A link to a file counts as a file; a link to a folder is left out: it may run in circles.
 *
 * @throws where the folder cannot be read
 */
export async function entriesOf(
  folder: vscode.Uri,
): Promise<readonly { readonly name: string; readonly address: string; readonly kind: 'file' | 'folder' }[]> {
  const entries = await vscode.workspace.fs.readDirectory(folder);
  return entries.flatMap(([name, type]) => {
    const kind =
      type === vscode.FileType.Directory ? 'folder' : type & vscode.FileType.File ? 'file' : undefined;
    return kind === undefined ? [] : [{ name, address: vscode.Uri.joinPath(folder, name).toString(), kind }];
  });
}

import * as vscode from 'vscode';

const most = 2000;

/**
 * The plan files of the workspace, up to 2,000. Walks the folders itself: a virtual workspace in a browser has
 * no file search.
 */
export const planFiles = async (): Promise<readonly vscode.Uri[]> => {
  const found: vscode.Uri[] = [];
  const folders = (vscode.workspace.workspaceFolders ?? []).map(({ uri }) => uri);
  for (let folder = folders.shift(); folder && found.length < most; folder = folders.shift()) {
    for (const [name, type] of await vscode.workspace.fs.readDirectory(folder)) {
      const uri = vscode.Uri.joinPath(folder, name);
      if (type === vscode.FileType.Directory && !/^\.|^node_modules$/.test(name)) folders.push(uri);
      if (type & vscode.FileType.File && name.endsWith('.crib')) found.push(uri);
    }
  }
  return found.slice(0, most);
};

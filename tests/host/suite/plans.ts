import * as vscode from 'vscode';
import { until } from './waiting.js';

export const example = (path: string): vscode.Uri => {
  const [folder] = vscode.workspace.workspaceFolders ?? [];
  if (!folder) throw new Error('No folder is open.');
  return vscode.Uri.joinPath(folder.uri, path);
};

export const trailer = 'plans/trailer-on-car.crib';

/** Opens an example in the first column, as it is on disk. */
export const openExample = async (path: string): Promise<vscode.TextEditor> => {
  const document = await vscode.workspace.openTextDocument(example(path));
  const editor = await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
  if (document.isDirty) await vscode.commands.executeCommand('workbench.action.files.revert');
  return editor;
};

/** Replaces the first text that the pattern finds, as typing does: one edit of the open document. */
export const retype = async (editor: vscode.TextEditor, pattern: RegExp, text: string): Promise<void> => {
  const found = pattern.exec(editor.document.getText());
  if (!found) throw new Error(`${pattern} is not in ${editor.document.uri.path}`);
  const from = editor.document.positionAt(found.index);
  const to = editor.document.positionAt(found.index + found[0].length);
  if (!(await editor.edit((edit) => edit.replace(new vscode.Range(from, to), text)))) {
    throw new Error('The editor refused the edit.');
  }
};

export interface Drawn {
  readonly uri: string;
  readonly version: number;
  readonly words: string;
  readonly unchecked: boolean;
}

/** What the panel has painted, newest last. Starts to listen when it is called. */
export const paintings = async () => {
  const extension = vscode.extensions.getExtension<{ onDidDraw: vscode.Event<Drawn> }>(
    'cribwright.cribwright',
  );
  if (!extension) throw new Error('Cribwright is not installed here.');
  const { onDidDraw } = await extension.activate();
  const seen: Drawn[] = [];
  onDidDraw((drawn) => seen.push(drawn));
  return {
    seen,
    /** Waits until the panel has painted a file, whatever its version. */
    at: (uri: vscode.Uri): Promise<Drawn> =>
      until(`the drawing of ${uri.toString()}`, onDidDraw, () =>
        seen.findLast((d) => d.uri === uri.toString()),
      ),
    /** Waits until the panel has painted a document as it now is, with what its checks say. */
    of: (
      document: vscode.TextDocument,
      fits: (drawn: Drawn) => boolean = (d) => !d.unchecked,
    ): Promise<Drawn> =>
      until(`the drawing of version ${document.version}`, onDidDraw, () =>
        seen.findLast((d) => d.uri === document.uri.toString() && d.version === document.version && fits(d)),
      ),
  };
};

export const closeAll = async (): Promise<void> => {
  await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  await vscode.commands.executeCommand('workbench.action.closeAllEditors');
};

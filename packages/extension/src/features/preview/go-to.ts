import type { TextRange } from '@cribwright/language';
import * as vscode from 'vscode';

/** Puts the cursor on the line that made a shape, in an editor that already shows the file where there is one. */
export const goTo = async (
  places: Readonly<Record<string, TextRange>>,
  element: string,
  property: string | undefined,
): Promise<void> => {
  const place = (property !== undefined && places[`${element}#${property}`]) || places[element];
  if (!place) return;
  const uri = vscode.Uri.parse(place.uri);
  const { start, end } = place.range;
  const column = vscode.window.visibleTextEditors.find(
    ({ document }) => document.uri.toString() === uri.toString(),
  )?.viewColumn;
  const editor = await vscode.window.showTextDocument(uri, {
    viewColumn: column ?? vscode.ViewColumn.One,
  });
  const from = new vscode.Position(start.line, start.character);
  editor.selection = new vscode.Selection(from, from);
  editor.revealRange(
    new vscode.Range(from, new vscode.Position(end.line, end.character)),
    vscode.TextEditorRevealType.InCenterIfOutsideViewport,
  );
};

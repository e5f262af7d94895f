import * as vscode from 'vscode';
import type { Feature } from '../../session/session.js';

/** Opens the page of a rule: what it protects against, its sum, its sources. Works without a network. */
export const rules: Feature = ({ context }) => {
  context.subscriptions.push(
    vscode.commands.registerCommand('cribwright.showRule', async (given?: string) => {
      const rule = given ?? (await ruleAtCursor());
      if (rule === undefined) return;
      const page = vscode.Uri.from({
        scheme: 'cribwright',
        path: `/rules/${rule}.md`,
      });
      try {
        await vscode.workspace.fs.stat(page);
      } catch {
        void vscode.window.showWarningMessage(vscode.l10n.t('There is no page for {0}.', rule));
        return;
      }
      await vscode.commands.executeCommand('markdown.showPreviewToSide', page);
    }),
  );
};

/** The rule of the finding under the cursor, or one picked from those in the file. */
const ruleAtCursor = async (): Promise<string | undefined> => {
  const editor = vscode.window.activeTextEditor;
  if (editor?.document.languageId !== 'cribwright') return undefined;
  const all = vscode.languages.getDiagnostics(editor.document.uri);
  const here = all.filter((d) => d.range.contains(editor.selection.active));
  const ids = [...new Set((here.length > 0 ? here : all).flatMap(ruleOf))];
  if (ids.length <= 1) return ids[0];
  return vscode.window.showQuickPick(ids, {
    placeHolder: vscode.l10n.t('Which rule?'),
  });
};

const ruleOf = ({ code }: vscode.Diagnostic): string[] =>
  code === undefined ? [] : [String(typeof code === 'object' ? code.value : code)];

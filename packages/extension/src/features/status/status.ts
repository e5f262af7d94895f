import { term } from '@cribwright/messages';
import type { AnalysisChangedParams } from '@cribwright/server/protocol';
import * as vscode from 'vscode';
import { readerWords } from '../../session/reader-words.js';
import type { Feature } from '../../session/session.js';
import { type Standing, standingOf } from './standing.js';

/** The worst finding of the plan being edited, in the status bar. A click goes to it. */
export const status: Feature = ({ context, server }) => {
  const counts = new Map<string, AnalysisChangedParams>();
  const item = vscode.window.createStatusBarItem('cribwright.status', vscode.StatusBarAlignment.Left, 50);
  item.name = vscode.l10n.t('Worst finding');
  item.command = 'cribwright.goToWorst';

  const show = (): void => {
    const document = vscode.window.activeTextEditor?.document;
    if (document?.languageId !== 'cribwright') {
      item.hide();
      return;
    }
    const found = vscode.languages.getDiagnostics(document.uri);
    const standing = standingOf(counts.get(document.uri.toString()), found.map(seen));
    item.text = `${icons[standing.kind]} ${words(standing)}`;
    item.tooltip = [standing.worst, readerWords().message(term('caution.text'))].filter(Boolean).join('\n\n');
    item.backgroundColor =
      standing.kind === 'danger' ? new vscode.ThemeColor('statusBarItem.errorBackground') : undefined;
    item.show();
  };

  context.subscriptions.push(
    item,
    server.onAnalysis((params) => {
      counts.set(vscode.Uri.parse(params.uri).toString(), params);
      show();
    }),
    vscode.workspace.onDidCloseTextDocument(({ uri }) => counts.delete(uri.toString())),
    vscode.window.onDidChangeActiveTextEditor(show),
    vscode.languages.onDidChangeDiagnostics(show),
    vscode.commands.registerCommand('cribwright.goToWorst', goToWorst),
  );
  show();
};

const icons: Readonly<Record<Standing['kind'], string>> = {
  danger: '$(error)',
  'not run': '$(question)',
  warning: '$(warning)',
  unread: '$(circle-slash)',
  waiting: '$(loading~spin)',
  clear: '$(check)',
};

const words = ({ kind, count }: Standing): string => {
  switch (kind) {
    case 'danger':
      return vscode.l10n.t('{0} unsafe', count);
    case 'not run':
      return count === 1
        ? vscode.l10n.t('1 check could not run')
        : vscode.l10n.t('{0} checks could not run', count);
    case 'warning':
      return count === 1 ? vscode.l10n.t('1 warning') : vscode.l10n.t('{0} warnings', count);
    case 'unread':
      return vscode.l10n.t('cannot be read');
    case 'waiting':
      return vscode.l10n.t('checking');
    case 'clear':
      return vscode.l10n.t('nothing unsafe found');
  }
};

const seen = ({ severity, message }: vscode.Diagnostic) => ({
  severity,
  message,
});

const goToWorst = async (): Promise<void> => {
  const plan = [vscode.window.activeTextEditor, ...vscode.window.visibleTextEditors].find(
    (editor) => editor?.document.languageId === 'cribwright',
  );
  const worst = [...vscode.languages.getDiagnostics(plan?.document.uri ?? nowhere)].sort(
    (a, b) => a.severity - b.severity || a.range.start.compareTo(b.range.start),
  )[0];
  if (!plan || !worst) return;
  const { document, viewColumn } = plan;
  const column = viewColumn ?? vscode.ViewColumn.Active;
  const editor = await vscode.window.showTextDocument(document, { viewColumn: column });
  editor.selection = new vscode.Selection(worst.range.start, worst.range.start);
  editor.revealRange(worst.range, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
  await vscode.commands.executeCommand('editor.action.showHover');
};

const nowhere = vscode.Uri.parse('untitled:nowhere');

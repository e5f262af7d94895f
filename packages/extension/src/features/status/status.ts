import { term } from '@cribwright/messages';
import type { AnalysisChangedParams } from '@cribwright/server/protocol';
import * as vscode from 'vscode';
import { isEdited } from '../../session/edited.js';
import { Lapse } from '../../session/lapse.js';
import { readerWords } from '../../session/reader-words.js';
import type { Feature } from '../../session/session.js';
import { type Standing, standingOf } from './standing.js';

/** The worst finding of the plan being edited, in the status bar. A click goes to it. */
export const status: Feature = ({ context, server, verdicts }) => {
  const counts = new Map<string, AnalysisChangedParams>();
  const item = vscode.window.createStatusBarItem('cribwright.status', vscode.StatusBarAlignment.Left, 50);
  item.name = vscode.l10n.t('Worst finding');

  const plan = (): vscode.TextDocument | undefined => {
    const document = vscode.window.activeTextEditor?.document;
    return document?.languageId === 'cribwright' && isEdited(document.uri) ? document : undefined;
  };
  const holds = (): boolean => {
    const document = plan();
    return document === undefined || verdicts.holds(document.uri, counts.get(document.uri.toString()));
  };
  const show = (): void => {
    const document = plan();
    if (!document) {
      item.hide();
      return;
    }
    const found = vscode.languages.getDiagnostics(document.uri);
    const known = lapse.lapsed ? undefined : counts.get(document.uri.toString());
    const standing = standingOf(known ?? (verdicts.stopped ? 'not checked' : 'waiting'), found.map(seen));
    const notChecked = standing.kind === 'not checked';
    item.text = `${icons[standing.kind]} ${words(standing)}`;
    item.tooltip = [notChecked ? verdicts.why() : standing.worst, readerWords().message(term('caution.text'))]
      .filter(Boolean)
      .join('\n\n');
    item.command = notChecked ? 'cribwright.restart' : 'cribwright.goToWorst';
    item.backgroundColor =
      standing.kind === 'danger' || notChecked
        ? new vscode.ThemeColor('statusBarItem.errorBackground')
        : undefined;
    item.show();
  };
  const lapse = new Lapse(holds, show);

  context.subscriptions.push(
    item,
    new vscode.Disposable(() => lapse.stop()),
    server.onAnalysis((params) => {
      counts.set(vscode.Uri.parse(params.uri).toString(), params);
      lapse.look();
      show();
    }),
    verdicts.onDidChangeServer(() => lapse.look()),
    vscode.workspace.onDidChangeTextDocument(() => lapse.look()),
    vscode.workspace.onDidCloseTextDocument(({ uri }) => counts.delete(uri.toString())),
    vscode.window.onDidChangeActiveTextEditor(() => lapse.restart()),
    vscode.languages.onDidChangeDiagnostics(show),
    vscode.commands.registerCommand('cribwright.goToWorst', goToWorst),
  );
  lapse.restart();
};

const icons: Readonly<Record<Standing['kind'], string>> = {
  danger: '$(error)',
  'not run': '$(question)',
  warning: '$(warning)',
  unread: '$(circle-slash)',
  waiting: '$(loading~spin)',
  accepted: '$(info)',
  clear: '$(check)',
  'no plan': '$(dash)',
  'not checked': '$(circle-slash)',
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
    case 'accepted':
      return vscode.l10n.t('{0} accepted, nothing else unsafe found', count);
    case 'clear':
      return vscode.l10n.t('nothing unsafe found');
    case 'no plan':
      return vscode.l10n.t('no plan in this file');
    case 'not checked':
      return vscode.l10n.t('Not checked');
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

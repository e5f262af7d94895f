import * as vscode from 'vscode';
import { proposalScheme } from '../../session/proposal-scheme.js';
import type { Feature } from '../../session/session.js';
import { DrawingPanel } from './drawing-panel.js';
import { followCursor } from './follow-cursor.js';
import { keptState } from './kept-state.js';
import { saveDrawing } from './save-drawing.js';

const viewType = 'cribwright.drawing';

/** The drawing beside the text. One panel follows the editor; a locked one stays with its file. */
export const preview: Feature = (session) => {
  const { context, server } = session;
  const panels = new Set<DrawingPanel>();

  const adopt = (panel: vscode.WebviewPanel): DrawingPanel => {
    const drawing = new DrawingPanel(panel, session);
    panels.add(drawing);
    panel.iconPath = vscode.Uri.joinPath(context.extensionUri, 'packages/extension/media/icon.png');
    panel.onDidDispose(() => panels.delete(drawing));
    panel.onDidChangeViewState(() => tell(drawing));
    tell(drawing);
    return drawing;
  };
  const active = (): DrawingPanel | undefined =>
    [...panels].find(({ panel }) => panel.active) ?? following() ?? [...panels][0];
  const following = (): DrawingPanel | undefined => [...panels].find(({ locked }) => !locked);
  const showing = (uri: string): readonly DrawingPanel[] => {
    const shown = vscode.Uri.parse(uri).toString();
    return [...panels].filter(({ shows }) => shows === shown);
  };
  const tell = ({ panel, locked }: DrawingPanel): void => {
    if (panel.active) void vscode.commands.executeCommand('setContext', 'cribwright.drawingLocked', locked);
  };

  const open = async (given?: vscode.Uri | string, element?: string) => {
    const uri = typeof given === 'string' ? vscode.Uri.parse(given) : (given ?? planInView());
    if (!uri) {
      void vscode.window.showInformationMessage(
        vscode.l10n.t('Open a plan first: a file that ends in .crib.'),
      );
      return undefined;
    }
    const drawing =
      following() ??
      adopt(
        vscode.window.createWebviewPanel(viewType, '', {
          viewColumn: vscode.ViewColumn.Beside,
          preserveFocus: true,
        }),
      );
    drawing.panel.reveal(undefined, true);
    await drawing.show(uri);
    if (element !== undefined) drawing.light(element);
    return { uri: uri.toString() };
  };

  context.subscriptions.push(
    vscode.commands.registerCommand('cribwright.openPreview', open),
    vscode.commands.registerCommand('cribwright.lockPreview', () => setLock(true)),
    vscode.commands.registerCommand('cribwright.unlockPreview', () => setLock(false)),
    vscode.commands.registerCommand('cribwright.undoInText', () => inText('undo')),
    vscode.commands.registerCommand('cribwright.redoInText', () => inText('redo')),
    vscode.commands.registerCommand('cribwright.saveDrawing', (format?: string, data?: string) =>
      saveDrawing(active(), format, data),
    ),
    vscode.window.registerWebviewPanelSerializer(viewType, {
      async deserializeWebviewPanel(panel, state) {
        const kept = keptState(state);
        const drawing = adopt(panel);
        const uri = kept ? vscode.Uri.parse(kept.uri) : planInView();
        // Not waited for: the page is put up only once this is done.
        if (uri) void drawing.show(uri, kept);
      },
    }),
    server.onAnalysis(({ uri, loads }) => {
      if (loads === 'pending') return;
      for (const drawing of showing(uri)) void drawing.refresh();
    }),
    server.onLayout((reply) => {
      for (const drawing of showing(reply.uri)) drawing.layout(reply);
    }),
    session.verdicts.onDidChangeServer(() => {
      for (const drawing of panels) drawing.textChanged();
    }),
    vscode.workspace.onDidChangeTextDocument(({ document: { uri } }) => {
      for (const drawing of showing(uri.toString())) drawing.textChanged();
    }),
    vscode.workspace.onDidCloseTextDocument(({ uri }) => {
      // The drawing stays, and so must the checks of its text.
      for (const drawing of showing(uri.toString())) void drawing.refresh();
    }),
    vscode.window.onDidChangeActiveTextEditor((editor) => {
      if (editor?.document.languageId !== 'cribwright') return;
      const { uri } = editor.document;
      if (uri.scheme === proposalScheme) return;
      const drawing = following();
      if (drawing && drawing.shows !== uri.toString()) void drawing.show(uri);
      if (!drawing) openByItself();
    }),
    vscode.workspace.onDidChangeConfiguration((change) => {
      if (!change.affectsConfiguration('cribwright')) return;
      // Other words or units: the same findings are drawn again. The server checks nothing anew for them.
      for (const drawing of panels) void drawing.refresh();
    }),
    followCursor(server, () => panels),
  );

  /** Where the user asked for it. A drawing of an earlier window that is being restored is there as a tab already. */
  const openByItself = (): void => {
    if (planInView() !== undefined && opensByItself() && !hasTab()) void open();
  };
  openByItself();

  const setLock = (locked: boolean): void => {
    const drawing = active();
    if (!drawing) return;
    drawing.lock(locked);
    tell(drawing);
  };

  /** Undo belongs to the text: the panel keeps no list of its own. */
  const inText = async (command: 'undo' | 'redo'): Promise<void> => {
    const drawing = active();
    if (drawing?.shows === undefined) return;
    const uri = vscode.Uri.parse(drawing.shows);
    const shown = vscode.window.visibleTextEditors.find((e) => e.document.uri.toString() === uri.toString());
    await vscode.window.showTextDocument(uri, {
      viewColumn: shown?.viewColumn ?? vscode.ViewColumn.One,
    });
    await vscode.commands.executeCommand(command);
    drawing.panel.reveal(undefined, false);
  };
};

const opensByItself = (): boolean =>
  vscode.workspace.getConfiguration('cribwright').get('preview.openWithPlan', false);

const hasTab = (): boolean =>
  vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .some(({ input }) => input instanceof vscode.TabInputWebview && input.viewType.endsWith(viewType));

const planInView = (): vscode.Uri | undefined =>
  [vscode.window.activeTextEditor, ...vscode.window.visibleTextEditors].find(
    (editor) => editor?.document.languageId === 'cribwright' && editor.document.uri.scheme !== proposalScheme,
  )?.document.uri;

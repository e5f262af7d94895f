import type { MakeSafeReply } from '@cribwright/server/protocol';
import * as vscode from 'vscode';
import { proposalScheme } from '../../session/proposal-scheme.js';
import type { Feature, Session } from '../../session/session.js';
import { DrawingPanel } from '../preview/drawing-panel.js';
import { type Proposal, Proposals } from './proposals.js';

/**
 * Looks for changes that make a plan safe, and shows them: the text beside the proposed one, the drawing of what is
 * proposed, and the steps. Nothing is changed until somebody applies it; then it is one step of undo.
 */
export const makeSafe: Feature = (session) => {
  const { context, client } = session;
  const proposals = new Proposals();
  let drawing: DrawingPanel | undefined;

  const draw = async (uri: vscode.Uri, reply: MakeSafeReply): Promise<void> => {
    if (drawing === undefined) {
      const panel = vscode.window.createWebviewPanel('cribwright.proposal', '', {
        viewColumn: vscode.ViewColumn.Beside,
        preserveFocus: true,
      });
      drawing = new DrawingPanel(panel, session);
      panel.onDidDispose(() => {
        drawing = undefined;
      });
    }
    await drawing.propose(uri, reply.analysis);
  };

  const look = async (given?: vscode.Uri | string) => {
    const document = await planToMend(given);
    if (document === undefined) {
      void vscode.window.showInformationMessage(
        vscode.l10n.t('Open a plan first: a file that ends in .crib.'),
      );
      return undefined;
    }
    const reply = await searched(session, document);
    if (reply === undefined) return undefined;
    if (reply.steps.length === 0) {
      void vscode.window.showInformationMessage(reply.summary);
      return { summary: reply.summary, steps: reply.steps };
    }
    const uri = proposals.put({ of: document.uri, reply });
    const title = vscode.l10n.t('{0}: as it is, and made safe', nameOf(document.uri));
    await vscode.commands.executeCommand('vscode.diff', document.uri, uri, title, { preview: false });
    await draw(uri, reply);
    void ask(uri);
    return { summary: reply.summary, steps: reply.steps, proposal: uri.toString() };
  };

  /** Stays until it is answered; the comparison has a button of its own too. */
  const ask = async (uri: vscode.Uri): Promise<void> => {
    const proposal = proposals.at(uri);
    if (proposal === undefined) return;
    const [apply, steps] = [vscode.l10n.t('Apply Changes'), vscode.l10n.t('Show Steps')];
    const picked = await vscode.window.showInformationMessage(proposal.reply.summary, apply, steps);
    if (picked === apply) await applied(uri);
    if (picked !== steps) return;
    await showSteps(proposal.reply);
    await ask(uri);
  };

  const applied = async (given?: vscode.Uri | string): Promise<boolean> => {
    const uri = typeof given === 'string' ? vscode.Uri.parse(given) : (given ?? proposalInView());
    const proposal = uri && proposals.at(uri);
    if (uri === undefined || proposal === undefined) return false;
    const refused = await apply(proposal, client);
    if (refused !== undefined) {
      void vscode.window.showWarningMessage(refused);
      return false;
    }
    proposals.drop(uri);
    drawing?.panel.dispose();
    await closeTabsOf(uri);
    return true;
  };

  context.subscriptions.push(
    proposals,
    vscode.workspace.registerTextDocumentContentProvider(proposalScheme, proposals),
    vscode.commands.registerCommand('cribwright.makeSafe', look),
    vscode.commands.registerCommand('cribwright.applyProposal', applied),
  );
};

/** The plan that was named, or the one in view. */
async function planToMend(given: vscode.Uri | string | undefined): Promise<vscode.TextDocument | undefined> {
  if (given !== undefined)
    return vscode.workspace.openTextDocument(typeof given === 'string' ? vscode.Uri.parse(given) : given);
  const editors = [vscode.window.activeTextEditor, ...vscode.window.visibleTextEditors];
  return editors.find(
    (e) => e?.document.languageId === 'cribwright' && e.document.uri.scheme !== proposalScheme,
  )?.document;
}

/** `undefined` where it was canceled. */
async function searched(
  { server }: Session,
  document: vscode.TextDocument,
): Promise<MakeSafeReply | undefined> {
  const title = vscode.l10n.t('Looking for changes that make {0} safe', nameOf(document.uri));
  return vscode.window.withProgress(
    { location: vscode.ProgressLocation.Notification, title, cancellable: true },
    async (_progress, token) => {
      try {
        return await server.makeSafe({ uri: document.uri.toString() }, token);
      } catch (error) {
        if (token.isCancellationRequested) return undefined;
        throw error;
      }
    },
  );
}

async function showSteps({ steps, left }: MakeSafeReply): Promise<void> {
  await vscode.window.showQuickPick(
    [
      ...steps.map(({ title, rule, effect, unsafe }, i) => ({
        label: `${i + 1}. ${title}`,
        description: rule,
        detail: [effect, unsafe].filter((part) => part !== undefined).join(' · '),
      })),
      ...left.map((label) => ({ label: `$(warning) ${label}` })),
    ],
    { title: vscode.l10n.t('Steps'), ignoreFocusOut: true },
  );
}

/** Makes the changes as one step of undo. An edit made for an older text is never applied. */
async function apply({ of, reply }: Proposal, client: Session['client']): Promise<string | undefined> {
  const movedOn = vscode.l10n.t(
    'The text has changed since these changes were proposed. Look for them again.',
  );
  const document = await vscode.workspace.openTextDocument(of);
  if (document.version !== reply.version) return movedOn;
  const edit = await client.protocol2CodeConverter.asWorkspaceEdit(reply.edit);
  if (document.version !== reply.version) return movedOn;
  if (await vscode.workspace.applyEdit(edit)) return undefined;
  return vscode.l10n.t('The editor did not take the change. Nothing was changed.');
}

const proposalInView = (): vscode.Uri | undefined =>
  [vscode.window.activeTextEditor, ...vscode.window.visibleTextEditors].find(
    (e) => e?.document.uri.scheme === proposalScheme,
  )?.document.uri;

async function closeTabsOf(uri: vscode.Uri): Promise<void> {
  const tabs = vscode.window.tabGroups.all
    .flatMap((group) => group.tabs)
    .filter(
      ({ input }) => input instanceof vscode.TabInputTextDiff && input.modified.toString() === uri.toString(),
    );
  await vscode.window.tabGroups.close(tabs);
}

const nameOf = ({ path }: vscode.Uri): string => path.slice(path.lastIndexOf('/') + 1);

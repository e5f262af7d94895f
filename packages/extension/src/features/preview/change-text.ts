import type { EditReply } from '@cribwright/server/protocol';
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/**
 * Asks the server for an edit and applies it as one step of undo. An edit made for an older text is never
 * applied.
 *
 * @returns why nothing was changed, or `undefined` when it was
 */
export const changeText = async (
  client: BaseLanguageClient,
  uri: vscode.Uri,
  version: number,
  ask: () => Promise<EditReply>,
): Promise<string | undefined> => {
  const document = await vscode.workspace.openTextDocument(uri);
  const movedOn = vscode.l10n.t('The text has changed since this was drawn. Nothing was changed; try again.');
  if (document.version !== version) return movedOn;
  const reply = await ask();
  if ('refused' in reply) return reply.refused;
  const edit = await client.protocol2CodeConverter.asWorkspaceEdit(reply.edit);
  if (document.version !== version) return movedOn;
  if (await vscode.workspace.applyEdit(edit)) return undefined;
  return vscode.l10n.t('The editor did not take the change. Nothing was changed.');
};

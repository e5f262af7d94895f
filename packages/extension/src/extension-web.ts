import * as vscode from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { type Api, activate as activateWith } from './session/activate.js';
import { clientOptions } from './session/client-options.js';
import { answerFileRequests } from './session/file-requests.js';

/** Entry point in the browser: the server is a worker, and reads files through the editor. */
export const activate = (context: vscode.ExtensionContext): Api => {
  const script = vscode.Uri.joinPath(context.extensionUri, 'packages/language/dist/server.worker.js');
  const client = new LanguageClient(
    'cribwright',
    'Cribwright',
    new Worker(script.toString(true)),
    clientOptions(true),
  );
  context.subscriptions.push(answerFileRequests(client));
  return activateWith(context, client, true);
};

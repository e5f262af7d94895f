import * as vscode from 'vscode';
import { BrowserMessageReader, BrowserMessageWriter, LanguageClient } from 'vscode-languageclient/browser';
import { type Api, activate as activateWith } from './activate.js';
import { clientOptions } from './session/client-options.js';
import { answerFileRequests } from './session/file-requests.js';
import { Lenses } from './session/lenses.js';

/** Entry point in the browser: the server is a worker, and reads files through the editor. */
export const activate = (context: vscode.ExtensionContext): Api => {
  const script = vscode.Uri.joinPath(context.extensionUri, 'packages/server/dist/server.worker.js');
  let worker: Worker | undefined;
  // A worker that was asked to shut down does not come back: each start has a new one.
  const start = async () => {
    worker?.terminate();
    worker = new Worker(script.toString(true));
    return { reader: new BrowserMessageReader(worker), writer: new BrowserMessageWriter(worker) };
  };
  const lenses = new Lenses();
  const client = new LanguageClient('cribwright', 'Cribwright', start, clientOptions(lenses, true));
  context.subscriptions.push(answerFileRequests(client), new vscode.Disposable(() => worker?.terminate()));
  return activateWith(context, client, lenses, true);
};

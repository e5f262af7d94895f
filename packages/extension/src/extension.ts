import * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { type Api, activate as activateWith } from './activate.js';
import { clientOptions } from './session/client-options.js';
import { Lenses } from './session/lenses.js';

/** Room for what one edit leaves behind, MB: with less, half of the time after an edit goes into clearing it away. */
const roomy = ['--max-semi-space-size=64'];

/** Entry point on the desktop and on remote machines: the server is a process beside the editor. */
export const activate = (context: vscode.ExtensionContext): Api => {
  const module = vscode.Uri.joinPath(context.extensionUri, 'packages/server/dist/server.cjs').fsPath;
  const server = { module, transport: TransportKind.ipc, options: { execArgv: roomy } };
  const lenses = new Lenses();
  const client = new LanguageClient(
    'cribwright',
    'Cribwright',
    {
      run: server,
      debug: {
        ...server,
        options: { execArgv: [...roomy, '--nolazy', '--inspect=6009'] },
      },
    },
    clientOptions(lenses, false),
  );
  return activateWith(context, client, lenses, false);
};

import * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { type Api, activate as activateWith } from './session/activate.js';
import { clientOptions } from './session/client-options.js';

/** Entry point on the desktop and on remote machines: the server is a process beside the editor. */
export const activate = (context: vscode.ExtensionContext): Api => {
  const module = vscode.Uri.joinPath(context.extensionUri, 'packages/language/dist/server.cjs').fsPath;
  const server = { module, transport: TransportKind.ipc };
  const client = new LanguageClient(
    'cribwright',
    'Cribwright',
    {
      run: server,
      debug: {
        ...server,
        options: { execArgv: ['--nolazy', '--inspect=6009'] },
      },
    },
    clientOptions(false),
  );
  return activateWith(context, client, false);
};

import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import * as features from './features/index.js';
import type { Drawn } from './session/drawn.js';
import { serverOf } from './session/server.js';
import type { Session } from './session/session.js';

/** What another extension, or a test, may listen to. */
export interface Api {
  readonly onDidDraw: vscode.Event<Drawn>;
}

/**
 * Starts the client and registers every feature, then returns: nothing here waits for the server, so the editor
 * never waits for us.
 */
export const activate = (context: vscode.ExtensionContext, client: BaseLanguageClient, web: boolean): Api => {
  const started = client.start();
  started.catch((error: unknown) => {
    void vscode.window.showErrorMessage(
      vscode.l10n.t(
        'Cribwright could not start its checks: {0}. Nothing in this window has been checked. Reload the window to try again.',
        error instanceof Error ? error.message : String(error),
      ),
    );
  });
  const drawn = new vscode.EventEmitter<Drawn>();
  context.subscriptions.push(client, drawn);
  const session: Session = {
    context,
    client,
    server: serverOf(client, started, context),
    web,
    drawn,
  };
  for (const feature of Object.values(features)) feature(session);
  return { onDidDraw: drawn.event };
};

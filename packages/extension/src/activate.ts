import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import * as features from './features/index.js';
import type { Drawn } from './session/drawn.js';
import type { Lenses } from './session/lenses.js';
import { serverOf } from './session/server.js';
import type { Session } from './session/session.js';
import { Verdicts } from './session/verdicts.js';

/** What another extension, or a test, may listen to. */
export interface Api {
  readonly onDidDraw: vscode.Event<Drawn>;
}

/**
 * Starts the client and registers every feature, then returns: nothing here waits for the server, so the editor
 * never waits for us.
 */
export const activate = (
  context: vscode.ExtensionContext,
  client: BaseLanguageClient,
  lenses: Lenses,
  web: boolean,
): Api => {
  const verdicts = new Verdicts(client);
  lenses.follow(verdicts);
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
  context.subscriptions.push(client, verdicts, lenses, drawn);
  const session: Session = {
    context,
    client,
    server: serverOf(client, started, context),
    verdicts,
    web,
    drawn,
  };
  for (const feature of Object.values(features)) feature(session);
  return { onDidDraw: drawn.event };
};

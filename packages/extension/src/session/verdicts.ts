import type { Signed } from '@cribwright/server/protocol';
import * as vscode from 'vscode';
import { type BaseLanguageClient, State } from 'vscode-languageclient';

/** What some check said, of which version of a text, by which life of the server. */
export interface Statement extends Signed {
  readonly version: number;
}

/**
 * Tells whether what was said of a text holds of it as it stands. A verdict holds for one version of the text, and for
 * one life of the server: where either has changed, nothing is known until it is said again.
 */
export class Verdicts implements vscode.Disposable {
  private life: string | undefined;
  private readonly changed = new vscode.EventEmitter<void>();
  private readonly listener: vscode.Disposable;

  constructor(private readonly client: BaseLanguageClient) {
    this.listener = client.onDidChangeState(({ newState }) => {
      this.life = newState === State.Running ? lifeOf(client.initializeResult) : undefined;
      this.changed.fire();
    });
  }

  /** A server came up, or went. */
  get onDidChangeServer(): vscode.Event<void> {
    return this.changed.event;
  }

  /** No server is there, and none is coming up: nothing is being checked. */
  get stopped(): boolean {
    return this.client.state === State.Stopped || this.client.state === State.StartFailed;
  }

  /** Whether it is of the open text as it stands, and whoever said it still follows that text. */
  holds(uri: vscode.Uri, said: Statement | undefined): boolean {
    return this.isLive(said) && opened(uri)?.version === said.version;
  }

  /** The same; a file that is not open was read as it lies on the disk. */
  holdsOrClosed(uri: vscode.Uri, said: Statement): boolean {
    return this.isLive(said) && (opened(uri) === undefined || this.holds(uri, said));
  }

  private isLive(said: Statement | undefined): said is Statement {
    return said !== undefined && this.life !== undefined && said.life === this.life;
  }

  /** Why there is no verdict, in words for the place where it would stand. */
  why(): string {
    return this.stopped
      ? vscode.l10n.t('Not checked: the checks have stopped. Run “Cribwright: Restart Language Server”.')
      : vscode.l10n.t('Not checked yet: the text has changed.');
  }

  dispose(): void {
    this.listener.dispose();
    this.changed.dispose();
  }
}

const opened = (uri: vscode.Uri): vscode.TextDocument | undefined => {
  const key = uri.toString();
  return vscode.workspace.textDocuments.find((d) => d.uri.toString() === key);
};

const lifeOf = (result: unknown): string | undefined =>
  typeof result === 'object' && result !== null && 'life' in result && typeof result.life === 'string'
    ? result.life
    : undefined;

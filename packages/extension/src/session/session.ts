import type * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { Drawn } from './drawn.js';
import type { Server } from './server.js';
import type { Verdicts } from './verdicts.js';

/** What every feature is given when the extension starts. */
export interface Session {
  readonly context: vscode.ExtensionContext;
  readonly client: BaseLanguageClient;
  readonly server: Server;
  /** Whether what was said of a text still holds of it. */
  readonly verdicts: Verdicts;
  /** True in the browser, where there are no processes and no local files. */
  readonly web: boolean;
  /** Fired by the panel when it has painted. */
  readonly drawn: vscode.EventEmitter<Drawn>;
}

/** Registers one thing the extension does. Whatever must end with it goes into `context.subscriptions`. */
export type Feature = (session: Session) => void;

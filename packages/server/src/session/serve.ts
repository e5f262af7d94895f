import type {
  Connection,
  InitializeParams,
  InitializeResult,
  ServerCapabilities,
} from 'vscode-languageserver';
import { TextDocumentSyncKind } from 'vscode-languageserver';
import type { Feature } from '../context/feature.js';
import { features } from '../generated/features.js';
import type { Platform } from './platform.js';
import { startSession } from './session.js';

/** Serves one client over the connection until it leaves. */
export function serve(connection: Connection, platform: Platform): void {
  connection.onInitialize((params): InitializeResult => {
    const session = startSession(connection, platform, params);
    for (const feature of features) feature.serve(session);
    return {
      serverInfo: { name: 'Cribwright' },
      life: session.life,
      capabilities: capabilities(features, params),
    };
  });
  connection.listen();
}

function capabilities(
  all: readonly Feature[],
  { capabilities: client }: InitializeParams,
): ServerCapabilities {
  const base: ServerCapabilities = {
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: false },
    workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
  };
  const offers = all.map((feature) => feature.offers?.(client) ?? {});
  const workspace = Object.assign({}, base.workspace, ...offers.map((o) => o.workspace ?? {}));
  return Object.assign({}, base, ...offers, { workspace });
}

import type { ClientCapabilities, Connection } from 'vscode-languageserver';
import { ignoreRejection } from './ignore-rejection.js';

/** Asks a client that can do it to tell of plan files that change on the disk. */
export function watchPlanFiles(connection: Connection, { workspace }: ClientCapabilities): void {
  if (!workspace?.didChangeWatchedFiles?.dynamicRegistration) return;
  const registerOptions = { watchers: [{ globPattern: '**/*.crib' }] };
  const method = 'workspace/didChangeWatchedFiles';
  ignoreRejection(
    connection.sendRequest('client/registerCapability', {
      registrations: [{ id: 'cribwright/files', method, registerOptions }],
    }),
  );
}

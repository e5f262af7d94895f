import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { askedFiles } from './asked-files.js';
import { diskFiles } from './disk-files.js';
import { messageOrder } from './message-order.js';
import { serve } from './serve.js';

// Speaks over what the command line says: --stdio, --node-ipc, --pipe or --socket.
const order = messageOrder();
const connection = createConnection(ProposedFeatures.all, order.options);
order.watch(connection);
serve(connection, {
  files: diskFiles(askedFiles(connection)),
  turn: (run) => void setImmediate(run),
});

// A fault in one answer must not take the others with it; it is said where the client logs.
process.on('unhandledRejection', (reason) => {
  connection.console.error(reason instanceof Error ? `${reason.stack}` : String(reason));
});

import { writeSync } from 'node:fs';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { askedFiles } from './session/asked-files.js';
import { diskFiles } from './session/disk-files.js';
import { frameGuard } from './session/frame-guard.js';
import { messageOrder } from './session/message-order.js';
import { serve } from './session/serve.js';

// Speaks over what the command line says: --stdio, --node-ipc, --pipe or --socket.
const order = messageOrder();
const connection = createConnection(ProposedFeatures.all, order.options);
order.watch(connection);
serve(connection, {
  files: diskFiles(askedFiles(connection)),
  turn: (run) => void setImmediate(run),
});

// The connection itself waits without a word where it cannot tell where a message begins: the client would think that
// its plans are being checked. It reads from the same stream, and is set up by now, so that nothing is lost to it.
if (process.argv.includes('--stdio'))
  process.stdin.on(
    'data',
    frameGuard((why) => {
      try {
        writeSync(2, `The language server stops: ${why}.\n`);
      } finally {
        process.exit(1);
      }
    }),
  );

// A fault in one answer must not take the others with it; it is said where the client logs.
process.on('unhandledRejection', (reason) => {
  connection.console.error(reason instanceof Error ? `${reason.stack}` : String(reason));
});

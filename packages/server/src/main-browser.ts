import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from 'vscode-languageserver/browser';
import { askedFiles } from './session/asked-files.js';
import { messageOrder } from './session/message-order.js';
import { serve } from './session/serve.js';

const order = messageOrder();
const connection = createConnection(
  ProposedFeatures.all,
  new BrowserMessageReader(globalThis),
  new BrowserMessageWriter(globalThis),
  order.options,
);
order.watch(connection);

// A worker has no `setImmediate`; a message to oneself comes after those that wait, without the clock's delay.
const channel = new MessageChannel();
const later: (() => void)[] = [];
// Assigned, since Node's types, by which this is checked, know no such property.
Object.assign(channel.port1, { onmessage: () => later.shift()?.() });

serve(connection, {
  files: askedFiles(connection),
  turn(run) {
    later.push(run);
    channel.port2.postMessage(undefined);
  },
});

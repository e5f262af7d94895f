import type { Connection, ConnectionOptions, Message, RequestMessage } from 'vscode-languageserver';
import { ErrorCodes, ResponseError } from 'vscode-languageserver';

const tooEarly = 'cribwright/tooEarly';
const tooLate = 'cribwright/tooLate';

/**
 * Holds a client to the order of the protocol's life: nothing before `initialize`, nothing but `exit` after
 * `shutdown`. A request out of order gets the error that the protocol names; a notification is passed over.
 */
export function messageOrder() {
  let stage: 'new' | 'running' | 'shut down' = 'new';

  function place(message: Message): Message | undefined {
    if (!isCall(message) || message.method === 'exit' || message.method.startsWith('$/')) return message;
    if (stage === 'running') {
      if (message.method === 'shutdown') stage = 'shut down';
      return message;
    }
    if (stage === 'new' && message.method === 'initialize') {
      stage = 'running';
      return message;
    }
    if (message.id === undefined) return undefined;
    return { ...message, method: stage === 'new' ? tooEarly : tooLate } as RequestMessage;
  }

  const options: ConnectionOptions = {
    messageStrategy: {
      handleMessage(message, next) {
        const placed = place(message);
        if (placed) return next(placed);
      },
    },
  };
  return {
    options,
    watch(connection: Connection): void {
      connection.onRequest(tooEarly, () => {
        throw new ResponseError(ErrorCodes.ServerNotInitialized, 'Send initialize first.');
      });
      connection.onRequest(tooLate, () => {
        throw new ResponseError(ErrorCodes.InvalidRequest, 'The server was asked to shut down.');
      });
    },
  };
}

const isCall = (message: Message): message is Message & { method: string; id?: number | string } =>
  'method' in message && typeof message.method === 'string';

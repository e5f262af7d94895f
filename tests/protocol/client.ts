import { spawn } from 'node:child_process';
import type { Diagnostic, InitializeResult, PublishDiagnosticsParams } from 'vscode-languageserver-protocol';
import { bundled } from '../bundled.js';
import { frame, frames, type Message } from './frames.js';

/** How long a reply may take before a test gives up on it. Nothing is measured by it. */
const patience = 120_000;

export class Refusal extends Error {
  constructor(
    readonly code: number,
    message: string,
  ) {
    super(message);
  }
}

export type Client = Awaited<ReturnType<typeof startServer>>;

/**
 * Starts the language server over stdio and speaks to it in raw frames.
 *
 * @param file another server, to be compared with ours
 */
export async function startServer(file?: string) {
  const server = file ?? (await bundled('server'));
  // As the extension starts it: much of what an edit makes is thrown away at the next.
  const child = spawn(process.execPath, ['--max-semi-space-size=64', server, '--stdio'], {
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  const received: Message[] = [];
  const answers = new Map<number, (m: Message) => void>();
  const replies = new Map<string, (params: unknown) => unknown>();
  let watchers: (() => void)[] = [];
  let lastId = 0;
  let errors = '';

  const out = frames((message) => {
    if (message.method !== undefined && message.id !== undefined) {
      const answer = replies.get(message.method);
      if (answer) send({ jsonrpc: '2.0', id: message.id, result: answer(message.params) ?? null });
      else send({ jsonrpc: '2.0', id: message.id, error: { code: -32601, message: 'not in this client' } });
    }
    received.push(message);
    if (message.method === undefined && typeof message.id === 'number') answers.get(message.id)?.(message);
    for (const look of [...watchers]) look();
  });
  child.stdout.on('data', (chunk: Buffer) => out.take(chunk));
  child.stderr.on('data', (chunk: Buffer) => {
    errors += chunk.toString('utf8');
  });
  child.stdin.on('error', () => undefined);
  const exited = new Promise<number | null>((done) => child.on('exit', (code) => done(code)));

  const raw = (text: string): void => void child.stdin.write(text);
  const send = (message: Message): void => raw(frame(JSON.stringify(message)));

  function impatient<T>(what: string, promise: Promise<T>): Promise<T> {
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<never>((_, fail) => {
      timer = setTimeout(
        () =>
          fail(
            new Error(`waited in vain for ${what}\n${errors}${JSON.stringify(received.slice(-5), null, 1)}`),
          ),
        patience,
      );
    });
    return Promise.race([promise, late]).finally(() => clearTimeout(timer));
  }

  /** The first message, already here or still to come, that `fits`. */
  const message = (what: string, fits: (m: Message) => boolean, from = 0): Promise<Message> =>
    impatient(
      what,
      new Promise((done) => {
        const look = (): void => {
          const hit = received.slice(from).find(fits);
          if (!hit) return;
          watchers = watchers.filter((w) => w !== look);
          done(hit);
        };
        watchers.push(look);
        look();
      }),
    );

  const notify = (method: string, params: unknown): void => send({ jsonrpc: '2.0', method, params });

  /** Sends a request and gives its id at once, so that it can be canceled. */
  function ask<Result>(method: string, params?: unknown): { id: number; result: Promise<Result> } {
    const id = ++lastId;
    const result = impatient(
      `the reply to ${method}`,
      new Promise<Result>((done, fail) =>
        answers.set(id, (m) =>
          m.error ? fail(new Refusal(m.error.code, m.error.message)) : done(m.result as Result),
        ),
      ),
    );
    send({ jsonrpc: '2.0', id, method, ...(params === undefined ? {} : { params }) });
    return { id, result };
  }

  return {
    raw,
    send,
    notify,
    ask,
    message,
    received,
    exited,
    child,
    stderr: () => errors,
    /** What the server wrote to its output outside frames. */
    stray: out.stray,
    /** How the client answers a request of the server. */
    answer: (method: string, reply: (params: unknown) => unknown) => void replies.set(method, reply),
    request: <Result>(method: string, params?: unknown): Promise<Result> =>
      ask<Result>(method, params).result,

    async initialize(more: Record<string, unknown> = {}): Promise<InitializeResult> {
      const result = await ask<InitializeResult>('initialize', {
        processId: process.pid,
        rootUri: null,
        capabilities: {},
        // However busy the machine is, a check is shown whole, unless a test is about what comes first.
        initializationOptions: { longestCheck: 1e9 },
        ...more,
      }).result;
      notify('initialized', {});
      return result;
    },
    open: (uri: string, text: string, version = 1) =>
      notify('textDocument/didOpen', { textDocument: { uri, languageId: 'cribwright', version, text } }),
    /** Replaces the whole text. */
    change: (uri: string, text: string, version: number) =>
      notify('textDocument/didChange', { textDocument: { uri, version }, contentChanges: [{ text }] }),
    close: (uri: string) => notify('textDocument/didClose', { textDocument: { uri } }),
    /** What is published for a file at a version; only messages after `from` count. */
    async diagnostics(uri: string, version?: number, from = 0): Promise<Diagnostic[]> {
      const isIt = (p: PublishDiagnosticsParams): boolean =>
        p.uri === uri && (version === undefined || p.version === version);
      const found = await message(
        `diagnostics of ${uri} at version ${version ?? 'any'}`,
        (m) => m.method === 'textDocument/publishDiagnostics' && isIt(m.params as PublishDiagnosticsParams),
        from,
      );
      return (found.params as PublishDiagnosticsParams).diagnostics;
    },
    /** Waits for diagnostics of a file that `fits`, among the messages after `from`: older ones may still be on their way. */
    async diagnosticsThat(
      what: string,
      uri: string,
      fits: (found: readonly Diagnostic[]) => boolean,
      from: number,
    ): Promise<readonly Diagnostic[]> {
      const found = await message(
        `diagnostics of ${uri} ${what}`,
        (m) => {
          const p = m.params as PublishDiagnosticsParams | undefined;
          return m.method === 'textDocument/publishDiagnostics' && p?.uri === uri && fits(p.diagnostics);
        },
        from,
      );
      return (found.params as PublishDiagnosticsParams).diagnostics;
    },
    /** Waits until nothing of a file is left to be worked out. */
    whole: (uri: string): Promise<Message> =>
      message(`the whole analysis of ${uri}`, (m) => {
        const p = m.params as { uri?: string; pending?: boolean } | undefined;
        return m.method === 'cribwright/analysisChanged' && p?.uri === uri && p.pending === false;
      }),
    /** Every publication for a file so far. */
    published: (uri: string): PublishDiagnosticsParams[] =>
      received
        .filter((m) => m.method === 'textDocument/publishDiagnostics')
        .map((m) => m.params as PublishDiagnosticsParams)
        .filter((p) => p.uri === uri),
    /** Ends the server in the orderly way. */
    async stop(): Promise<number | null> {
      if (child.exitCode === null) {
        await ask('shutdown').result.catch(() => undefined);
        notify('exit', undefined);
      }
      return impatient('the end of the server', exited);
    },
    kill: () => void child.kill('SIGKILL'),
  };
}

import { afterEach, describe, expect, it } from 'vitest';
import { type Client, Refusal, startServer } from './client.js';
import { frame } from './frames.js';

let client: Client | undefined;
const started = async (): Promise<Client> => {
  client = await startServer();
  return client;
};
afterEach(() => client?.kill());

const codeOf = (promise: Promise<unknown>): Promise<number | undefined> =>
  promise.then(
    () => undefined,
    (error: unknown) => (error instanceof Refusal ? error.code : Promise.reject(error)),
  );

const uri = 'file:///alder-ridge/lifecycle.crib';

describe('life of the server', () => {
  it('says what it can do, and its name', async () => {
    const server = await started();
    const { capabilities, serverInfo } = await server.initialize();
    expect(serverInfo?.name).toBe('Cribwright');
    expect(capabilities.textDocumentSync).toMatchObject({ openClose: true, change: 2 });
    expect(capabilities.hoverProvider).toBe(true);
  });

  it('refuses a request before initialize, and answers initialize after it', async () => {
    const server = await started();
    expect(await codeOf(server.request('textDocument/hover', {}))).toBe(-32002);
    expect((await server.initialize()).capabilities).toBeDefined();
  });

  it('passes over a notification before initialize', async () => {
    const server = await started();
    server.open(uri, 'plan "early" {}');
    await server.initialize();
    server.open(uri, 'plan "in time" {}', 2);
    await server.diagnostics(uri, 2);
    expect(server.published(uri).map((p) => p.version)).toEqual([2]);
  });

  it('refuses requests after shutdown, and ends with 0 after exit', async () => {
    const server = await started();
    await server.initialize();
    await server.request('shutdown');
    expect(await codeOf(server.request('textDocument/hover', {}))).toBe(-32600);
    server.notify('exit', undefined);
    expect(await server.exited).toBe(0);
  });

  it('ends with 1 on exit without shutdown', async () => {
    const server = await started();
    await server.initialize();
    server.notify('exit', undefined);
    expect(await server.exited).toBe(1);
  });

  it('ends when its client goes away', async () => {
    const server = await started();
    await server.initialize();
    server.child.stdin.end();
    expect(await server.exited).toBe(1);
  });
});

describe('malformed input', () => {
  /** The server still answers: a request made after the bad bytes gets its reply. */
  const lives = async (server: Client): Promise<void> => {
    server.open(uri, 'plan "lives" {}', 7);
    await server.diagnostics(uri, 7);
    expect(server.stray()).toBe('');
  };

  it('lives on after a body that is no JSON', async () => {
    const server = await started();
    await server.initialize();
    server.raw(frame('{"jsonrpc": "2.0", "method": '));
    await lives(server);
  });

  it('lives on after an unknown method, and says that it is unknown', async () => {
    const server = await started();
    await server.initialize();
    expect(await codeOf(server.request('cribwright/noSuchThing', {}))).toBe(-32601);
    server.notify('cribwright/noSuchNote', {});
    await lives(server);
  });

  it('lives on after parameters that make no sense', async () => {
    const server = await started();
    await server.initialize();
    const wrong: [string, unknown][] = [
      ['textDocument/hover', { textDocument: { uri: 7 }, position: 'top' }],
      ['textDocument/hover', null],
      [
        'textDocument/completion',
        { textDocument: { uri: 'file:///none.crib' }, position: { line: -4, character: 1e9 } },
      ],
      [
        'textDocument/rename',
        { textDocument: { uri: 'no uri at all' }, position: { line: 0, character: 0 } },
      ],
      ['cribwright/analysis', { uri: 'file:///none.crib' }],
      ['cribwright/edit', { uri: 'file:///none.crib', version: 1, edits: [] }],
    ];
    for (const [method, params] of wrong)
      await server.request(method, params).catch((e) => expect(e).toBeInstanceOf(Refusal));
    await lives(server);
  });

  it('passes over a change to a file that was never opened', async () => {
    const server = await started();
    await server.initialize();
    server.change('file:///never.crib', 'plan "x" {}', 3);
    server.close('file:///never.crib');
    await lives(server);
    expect(server.published('file:///never.crib')).toEqual([]);
  });

  it('takes a frame that arrives byte by byte, and two that arrive at once', async () => {
    const server = await started();
    await server.initialize();
    const slow = frame(JSON.stringify({ jsonrpc: '2.0', id: 'slow', method: 'cribwright/bundledFiles' }));
    for (const byte of slow) {
      server.raw(byte);
      await new Promise((next) => setImmediate(next));
    }
    await server.message('the reply to the slow frame', (m) => m.id === 'slow');
    const two = ['a', 'b'].map((id) =>
      frame(JSON.stringify({ jsonrpc: '2.0', id, method: 'cribwright/bundledFiles' })),
    );
    server.raw(two.join(''));
    for (const id of ['a', 'b']) await server.message(`the reply to ${id}`, (m) => m.id === id);
  });

  it('keeps letters of every alphabet whole', async () => {
    const server = await started();
    await server.initialize();
    server.open(uri, 'plan "Ångström ½ 🚒" {}', 1);
    const symbols = await server.request<{ name: string }[]>('textDocument/documentSymbol', {
      textDocument: { uri },
    });
    expect(symbols.map((s) => s.name)).toEqual(['plan "Ångström ½ 🚒"']);
  });
});

describe('a header that cannot be followed', () => {
  it.each([
    ['no length', 'Content-Type: x\r\n\r\n{}', 'a header has no Content-Length'],
    ['a length in words', 'Content-Length: twelve\r\n\r\n{}', 'Content-Length is not a number'],
    ['no field at all', 'hello\n', 'a header is malformed'],
    ['a field without end', `X: ${'x'.repeat(100_000)}`, 'a header is longer than 4 KB'],
    ['a message too large', 'Content-Length: 99999999999\r\n\r\n', 'a message is larger than 64 MB'],
  ])('ends the server, and it says why: %s', async (_, bytes, why) => {
    const server = await started();
    await server.initialize();
    server.raw(bytes);
    expect(await server.exited).toBe(1);
    expect(server.stderr()).toContain(`The language server stops: ${why}`);
    expect(server.stray()).toBe('');
  });
});

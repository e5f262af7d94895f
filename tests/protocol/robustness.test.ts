import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { type Client, Refusal, startServer } from './client.js';
import { positionOf, samplePlan } from './sample-plan.js';

let server: Client;
let last = 0;
const fresh = (): string => `file:///alder-ridge/robust-${++last}.crib`;

beforeAll(async () => {
  server = await startServer();
  await server.initialize();
});
afterAll(async () => {
  expect(await server.stop()).toBe(0);
});
// A reply to a request made now shows that the server lives; its output holds frames only.
afterEach(async () => {
  expect(await server.request('cribwright/bundledFiles')).toHaveProperty('uris');
  expect(server.stray()).toBe('');
});

describe('text with errors everywhere', () => {
  const texts: Readonly<Record<string, string>> = {
    'half a block': 'plan "half" {\n  crib A {\n    timber Fir4x4 24 in long\n',
    'an unknown unit': samplePlan(6).replace('24 in long', '24 furlongs long'),
    'a file that uses itself': 'use "robust-3.crib"\nplan "x" {}\n',
    'a stray brace': '}\n}\nplan "x" {}\n',
    'one quote too few': 'plan "never closed {\n  crib A {\n  }\n}\n',
    'one comment too open': 'plan "x" {\n/* never closed\n}\n',
    'no letters at all': '§§ ¶ ^^ \u0000\u0001 🚒 @@ ## {{{ ))) ;;; ,,,',
    'a binary file': String.fromCharCode(...Array.from({ length: 4000 }, (_, i) => (i * 7919) % 256)),
    'half a surrogate pair': 'plan "x\ud83d" {}\n',
    'half a surrogate pair in a path': 'use "x\ud83d.crib"\nplan "x" {}\n',
    'a percent sign in a path': 'use "50 %zz.crib"\nplan "x" {}\n',
  };
  it.each(Object.entries(texts))('%s gives messages at the places', async (_, text) => {
    const uri = fresh();
    server.open(uri, text);
    const found = await server.diagnostics(uri, 1);
    expect(found.length).toBeGreaterThan(0);
    const lines = text.split(/\r\n|\r|\n/);
    for (const { range } of found) {
      expect(range.start.line).toBeLessThan(lines.length);
      expect(range.end.character).toBeLessThanOrEqual((lines[range.end.line] ?? '').length);
    }
    server.close(uri);
  });

  it('answers every feature on every such text', async () => {
    for (const text of Object.values(texts)) {
      const uri = fresh();
      server.open(uri, text);
      const textDocument = { uri };
      const position = { line: 0, character: Math.min(5, text.length) };
      const range = { start: { line: 0, character: 0 }, end: { line: 3, character: 0 } };
      const options = { tabSize: 2, insertSpaces: true };
      const asked: [string, unknown][] = [
        ['hover', { textDocument, position }],
        ['completion', { textDocument, position }],
        ['definition', { textDocument, position }],
        ['references', { textDocument, position, context: { includeDeclaration: true } }],
        ['documentHighlight', { textDocument, position }],
        ['documentSymbol', { textDocument }],
        ['codeAction', { textDocument, range, context: { diagnostics: [] } }],
        ['codeLens', { textDocument }],
        ['documentLink', { textDocument }],
        ['formatting', { textDocument, options }],
        ['onTypeFormatting', { textDocument, position, ch: '}', options }],
        ['foldingRange', { textDocument }],
        ['selectionRange', { textDocument, positions: [position] }],
        ['semanticTokens/full', { textDocument }],
        ['inlayHint', { textDocument, range }],
        ['signatureHelp', { textDocument, position }],
      ];
      for (const [method, params] of asked) {
        const reply = await server.request(`textDocument/${method}`, params).then(
          () => undefined,
          (error: unknown) => `${method}: ${error instanceof Error ? error.message : ''}`,
        );
        expect(reply).toBeUndefined();
      }
      server.close(uri);
    }
  });
});

it('finds symbols of other files beside one whose path no file can have', async () => {
  const [odd, other] = [fresh(), fresh()];
  server.open(odd, 'use "x\ud83d.crib"\nplan "Odd" {}\n');
  server.open(other, 'cache Elsewhere { staffing 4 }\n');
  const found = await server.request<{ name: string }[]>('workspace/symbol', { query: 'Elsewhere' });
  expect(JSON.stringify(found)).toContain('Elsewhere');
  for (const uri of [odd, other]) server.close(uri);
});

describe('big input', () => {
  it.each([
    ['a megabyte of open braces', '{'.repeat(1_000_000)],
    ['a megabyte of closed braces', '}'.repeat(1_000_000)],
    ['a line of a million letters', `plan "x" { crib ${'a'.repeat(1_000_000)} {} }`],
    ['blocks in blocks in blocks', `${'plan "x" {\n'.repeat(5_000)}${'}\n'.repeat(5_000)}`],
    ['twenty thousand names that are not there', `plan "x" {\n${'captures nothing\n'.repeat(20_000)}}\n`],
  ])('%s is answered, with a message', async (_, text) => {
    const uri = fresh();
    server.open(uri, text);
    const found = await server.diagnostics(uri, 1);
    expect(found.length).toBeGreaterThan(0);
    // No client can show twenty thousand.
    expect(found.length).toBeLessThan(2000);
    server.close(uri);
  });
});

describe('cancellation', () => {
  it('answers a canceled request, and the one after it', async () => {
    const uri = fresh();
    server.open(uri, samplePlan(14));
    const at = { textDocument: { uri }, position: positionOf(samplePlan(14), 'courses', 2) };
    const first = server.ask('textDocument/hover', at);
    server.notify('$/cancelRequest', { id: first.id });
    const second = server.ask<{ contents: unknown }>('textDocument/hover', at);
    const outcome = await first.result.then(
      () => 'answered',
      (error: unknown) => (error instanceof Refusal ? error.code : error),
    );
    expect(['answered', -32800]).toContain(outcome);
    expect(await second.result).toHaveProperty('contents');
  });

  it('passes over a cancellation of nothing', async () => {
    server.notify('$/cancelRequest', { id: 99_999 });
    server.notify('$/cancelRequest', { id: 'never sent' });
    expect(await server.request('cribwright/bundledFiles')).toHaveProperty('uris');
  });
});

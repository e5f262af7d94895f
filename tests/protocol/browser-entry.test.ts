import { readFileSync } from 'node:fs';
import { Worker } from 'node:worker_threads';
import { rulePage } from '@cribwright/rules';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { bundled } from '../bundled.js';
import type { Message } from './frames.js';
import { samplePlan } from './sample-plan.js';

/** Gives a thread of Node the little of a browser's worker that the server uses: messages, and nothing of Node's. */
const shim = `
const { parentPort } = require('node:worker_threads');
const heard = new Set();
globalThis.addEventListener = (kind, listener) => kind === 'message' && heard.add(listener);
globalThis.removeEventListener = (kind, listener) => heard.delete(listener);
globalThis.postMessage = (message) => parentPort.postMessage(message);
parentPort.on('message', (data) => {
  globalThis.onmessage?.({ data });
  for (const listener of heard) listener({ data });
});
globalThis.self = globalThis;
globalThis.setImmediate = undefined;
globalThis.process = undefined;
globalThis.Buffer = undefined;
`;

let worker: Worker;
const received: Message[] = [];
let lastId = 0;
const files: Record<string, string> = {};

beforeAll(async () => {
  // Nothing of Node may be drawn in: it is bundled for a browser.
  const code = readFileSync(await bundled('server.worker'), 'utf8');
  worker = new Worker(shim + code, { eval: true });
  worker.on('message', (message: Message) => {
    received.push(message);
    if (message.method === 'cribwright/readFile' && message.id !== undefined) {
      const { uri } = message.params as { uri: string };
      worker.postMessage({ jsonrpc: '2.0', id: message.id, result: { text: files[uri] } });
    }
  });
});
afterAll(() => worker.terminate());

async function until<T>(look: () => T | undefined): Promise<T> {
  for (;;) {
    const found = look();
    if (found !== undefined) return found;
    await new Promise((next) => setTimeout(next, 5));
  }
}
async function request(method: string, params: unknown): Promise<Message> {
  const id = ++lastId;
  worker.postMessage({ jsonrpc: '2.0', id, method, params });
  return until(() => received.find((m) => m.method === undefined && m.id === id));
}
const notify = (method: string, params: unknown) => worker.postMessage({ jsonrpc: '2.0', method, params });
const published = (uri: string) =>
  until(() => {
    const notes = received.filter((m) => m.method === 'textDocument/publishDiagnostics');
    return notes
      .map((m) => m.params as { uri: string; diagnostics: { code: string }[] })
      .find((p) => p.uri === uri);
  });

it('starts in a worker, checks a plan, and asks the client for the files that it uses', async () => {
  const { result } = await request('initialize', { processId: null, rootUri: null, capabilities: {} });
  expect(result).toHaveProperty('capabilities.hoverProvider', true);
  notify('initialized', {});
  const uri = 'vscode-vfs://yard/plans/trailer.crib';
  files['vscode-vfs://yard/plans/yard.crib'] =
    'timber Yard4x4 {\n  species  DouglasFir\n  size     4x4\n  dressed  3.5 in by 3.5 in\n}\n';
  const text = samplePlan(14).replace('use "', 'use "yard.crib"\nuse "').replace('Fir4x4', 'Yard4x4');
  notify('textDocument/didOpen', { textDocument: { uri, languageId: 'cribwright', version: 1, text } });
  const codes = (await published(uri)).diagnostics.map((d) => d.code);
  expect(codes).toContain('crib-height');
  expect(codes).not.toContain('unknown-name');
});

it('has the pages of the rules, which the bundle holds packed', async () => {
  const { result } = await request('cribwright/rulePage', { rule: 'crib-height' });
  expect(result).toHaveProperty('markdown', rulePage('crib-height', 'en'));
});

import { PassThrough } from 'node:stream';
import { rules } from '@cribwright/rules';
import type { AnalysisReply } from '@cribwright/workspace';
import { fleet, trailerPlan } from '@cribwright/workspace/testing';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import {
  createConnection,
  createProtocolConnection,
  type Diagnostic,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { AnalysisRequest } from '../protocol/requests.js';
import { serve } from './serve.js';

/** How often a plan was checked: by how often the first rule was asked. */
let checks = 0;
const [first] = rules;
if (first === undefined) throw new Error('There is no rule.');
const { check } = first;
beforeAll(() => {
  Object.assign(first, {
    check: (...about: Parameters<typeof check>) => {
      checks++;
      return check(...about);
    },
  });
});
afterAll(() => void Object.assign(first, { check }));

const uri = 'file:///alder-ridge/plan.crib';
const closing: (() => void)[] = [];
afterEach(() => {
  for (const close of closing.splice(0)) close();
});

/** A client and a server in one process. `seen` waits for diagnostics of the plan that fit. */
async function started() {
  const [up, down] = [new PassThrough(), new PassThrough()];
  const texts: Readonly<Record<string, string>> = { 'file:///alder-ridge/fleet.crib': fleet };
  serve(createConnection(new StreamMessageReader(up), new StreamMessageWriter(down)), {
    files: {
      read: async (asked: string) => texts[asked],
      list: async () => [],
    },
    turn: (run) => void setImmediate(run),
  });
  const client = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
  closing.push(() => client.dispose());
  let last: readonly Diagnostic[] = [];
  let look = (): void => undefined;
  client.onNotification('textDocument/publishDiagnostics', (params: { diagnostics: Diagnostic[] }) => {
    last = params.diagnostics;
    look();
  });
  client.listen();
  const seen = (fits: (text: string) => boolean): Promise<string> =>
    new Promise((done) => {
      look = () => {
        const text = last.map((d) => d.message).join('\n');
        if (fits(text)) done(text);
      };
      look();
    });
  await client.sendRequest('initialize', {
    processId: null,
    rootUri: 'file:///alder-ridge',
    capabilities: {},
    locale: 'en',
  });
  await client.sendNotification('initialized', {});
  const set = (cribwright: unknown) =>
    client.sendNotification('workspace/didChangeConfiguration', { settings: { cribwright } });
  const drawn = (): Promise<AnalysisReply> => client.sendRequest(AnalysisRequest, { uri });
  return { client, seen, set, drawn };
}

it('checks nothing again where its reader switches units or language', async () => {
  const { client, seen, set, drawn } = await started();
  await client.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'cribwright', version: 1, text: trailerPlan },
  });
  await seen((text) => text.includes('49 in'));
  // All of it, the push too, so that nothing is left to work out later.
  await client.sendRequest('cribwright/expectations', { uri });
  const before = checks;
  expect(before).toBeGreaterThan(0);

  await set({ units: 'si' });
  const metric = await seen((text) => text.includes('1,245 mm'));
  expect(metric).not.toContain('49 in');
  expect((await drawn()).plans[0]?.plan.display).toBe('si');

  await set({ units: 'si', language: 'es' });
  const spanish = await seen((text) => text.includes('El límite es'));
  expect(spanish).toContain('1,245 mm');

  await set({ units: 'plan', language: 'en' });
  await seen((text) => text.includes('49 in') && text.includes('The limit is'));
  expect((await drawn()).plans[0]?.plan.display).toBe('us');
  expect(checks).toBe(before);
});

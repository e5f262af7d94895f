import { afterAll, beforeAll, expect, it } from 'vitest';
import type { CodeLens } from 'vscode-languageserver-protocol';
import { type Client, startServer } from './client.js';
import { samplePlan } from './sample-plan.js';

let server: Client;
beforeAll(async () => {
  server = await startServer();
  server.answer('workspace/codeLens/refresh', () => null);
  await server.initialize({
    capabilities: { workspace: { codeLens: { refreshSupport: true } } },
    // Each check is shown first without what hangs on a load.
    initializationOptions: { longestCheck: 0 },
  });
});
afterAll(async () => {
  expect(await server.stop()).toBe(0);
});

it('asks for the lenses again once the drawing was given what they lacked', async () => {
  const uri = 'file:///alder-ridge/lens.crib';
  const lens = async () =>
    (await server.request<CodeLens[]>('textDocument/codeLens', { textDocument: { uri } }))[0]?.command?.title;
  server.open(uri, samplePlan(14));
  expect(await lens()).toContain('· loads not calculated yet');
  const from = server.received.length;
  await server.request('cribwright/analysis', { uri });
  await server.message(
    'a request to ask for lenses again',
    (m) => m.method === 'workspace/codeLens/refresh',
    from,
  );
  expect(await lens()).not.toContain('· loads not calculated yet');
});

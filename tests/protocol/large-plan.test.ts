import type { AnalysisChangedParams } from '@cribwright/server/protocol';
import type { AnalysisReply } from '@cribwright/workspace';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { PublishDiagnosticsParams } from 'vscode-languageserver-protocol';
import { largePlanText } from '../bench/large-plan-text.js';
import { type Client, startServer } from './client.js';
import type { Message } from './frames.js';

/** A plan whose checks take long enough that nobody should wait for all of them. */
const uri = 'file:///alder-ridge/large.crib';
const refreshes = ['workspace/codeLens/refresh', 'workspace/inlayHint/refresh'];
let server: Client;

beforeAll(async () => {
  server = await startServer();
  for (const method of refreshes) server.answer(method, () => null);
  const refresh = { refreshSupport: true };
  await server.initialize({
    capabilities: { workspace: { codeLens: refresh, inlayHint: refresh } },
    // However quick the machine is, this plan counts as a long one.
    initializationOptions: { longestCheck: 0, settings: { codeLens: { enabled: true } } },
  });
});
afterAll(async () => {
  expect(server.stray()).toBe('');
  expect(await server.stop()).toBe(0);
});

const about =
  (version: number, fits: (p: AnalysisChangedParams) => boolean) =>
  ({ method, params }: Message): boolean => {
    const changed = params as AnalysisChangedParams | undefined;
    return (
      method === 'cribwright/analysisChanged' &&
      changed?.uri === uri &&
      changed.version === version &&
      fits(changed)
    );
  };
const first = (p: AnalysisChangedParams) => p.loads === 'pending';
const then = (p: AnalysisChangedParams) => p.loads === undefined;
const indexOf = (fits: (m: Message) => boolean): number => server.received.findIndex(fits);

it('answers with the loads, however long they take', async () => {
  server.open(uri, largePlanText());
  const { plans } = await server.request<AnalysisReply>('cribwright/analysis', { uri });
  expect(plans[0]?.analysis.pending).toBeUndefined();
  expect(plans[0]?.analysis.supports[0]?.figures.load).toBeDefined();
  await server.message('the loads', about(1, then));
});

it('shows how an edited plan lies at once, then what hangs on no load, then all', async () => {
  server.change(uri, largePlanText(40), 2);
  await server.message('the loads', about(2, then));
  const drawn = indexOf((m) => m.method === 'cribwright/layout' && JSON.stringify(m.params).includes(uri));
  const quick = indexOf(about(2, first));
  expect(drawn).toBeGreaterThan(0);
  expect(quick).toBeGreaterThan(drawn);
  expect(indexOf(about(2, then))).toBeGreaterThan(quick);
  const layout = server.received[drawn]?.params as AnalysisReply | undefined;
  expect(layout).toMatchObject({ pending: true, version: 2 });
  expect(layout?.plans[0]?.analysis).toMatchObject({ unchecked: true, findings: [] });
  expect(layout?.plans[0]?.plan.cribs).toHaveLength(104);
});

it('never tells of a load before it was worked out anew, and nothing looks done meanwhile', async () => {
  const published = server.published(uri).filter((p) => p.version === 2);
  const codes = (p: PublishDiagnosticsParams | undefined) => new Set(p?.diagnostics.map((d) => d.code));
  const [quick, whole] = [codes(published[0]), codes(published[1])];
  expect(quick.has('crib-height')).toBe(true);
  expect(quick.has('loss-of-support')).toBe(false);
  expect(whole.has('loss-of-support')).toBe(true);
  for (const m of server.received.filter(about(2, first)))
    expect((m.params as AnalysisChangedParams).pending).toBe(true);
});

let version = 2;
/** Edits, waits for what hangs on no load, and does something. On a busy machine that may come too late: tried anew. */
async function inBetween(act: () => Promise<boolean>): Promise<void> {
  for (let tries = 0; tries < 50; tries++) {
    server.change(uri, largePlanText(50 + tries), ++version);
    await server.message('what hangs on no load', about(version, first));
    if (await act()) return;
  }
  throw new Error('The loads were always there first.');
}

it('lets a newer edit in while the loads are being worked out', () =>
  inBetween(async () => {
    const overtaken = version;
    server.change(uri, largePlanText(45), ++version);
    await server.message('the loads', about(version, then));
    return !server.received.some(about(overtaken, then));
  }));

it('has lenses and hints asked for again once the loads are there', async () => {
  const from = server.received.length;
  const lenses = async () =>
    JSON.stringify(await server.request('textDocument/codeLens', { textDocument: { uri } }));
  // Not "side push and worst loads not calculated yet": those come later.
  const loadsPending = /(?<!worst )loads not calculated yet/;
  await inBetween(async () => loadsPending.test(await lenses()));
  await server.message('the loads', about(version, then));
  for (const method of refreshes) await server.message(method, (m) => m.method === method, from);
  const after = await lenses();
  expect(after).not.toMatch(loadsPending);
  expect(after).toContain('load ');
});

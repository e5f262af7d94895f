import type { SignedAnalysis } from '@cribwright/server/protocol';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Diagnostic, PublishDiagnosticsParams } from 'vscode-languageserver-protocol';
import { type Client, startServer } from './client.js';
import { samplePlan } from './sample-plan.js';

/** A plan in a few lines. Invented. */
const plan = (number: number): string => `plan "Dock ${number}" {
  ground {
    surface asphalt
    grade 1 % toward rear
  }
  vehicle trailer : VanTrailer53 {
    cargo 36,000 to 42,000 lb  from 4 ft to 48 ft height 72 to 96 in
  }
  crib A {
    timber Fir4x4 24 in long
    layout 2 by 2
    base solid
    courses ${2 + (number % 12)}
    at 21 ft, driver side 3 ft 4 in
    captures rail
  }
}
`;

const megabyte = `use "library/vehicles.crib"\n${Array.from({ length: 3000 }, (_, i) => plan(i)).join('')}`;
const pasted = 'file:///alder-ridge/pasted.crib';
const other = 'file:///alder-ridge/other.crib';

let server: Client;
beforeAll(async () => {
  server = await startServer();
  await server.initialize();
  server.open(pasted, samplePlan(13));
  server.open(other, samplePlan(13));
  await Promise.all([server.whole(pasted), server.whole(other)]);
});
afterAll(async () => {
  expect(server.stray()).toBe('');
  expect(await server.stop()).toBe(0);
});

const codes = (found: readonly Diagnostic[]) => found.map(({ code }) => code);

it('answers every feature of a file into which a megabyte of plans was pasted', async () => {
  expect(megabyte.length).toBeGreaterThan(900_000);
  const from = server.received.length;
  server.change(pasted, megabyte, 2);
  const textDocument = { uri: pasted };
  const position = { line: 10, character: 4 };
  for (const method of [
    'foldingRange',
    'documentSymbol',
    'semanticTokens/full',
    'documentLink',
    'selectionRange',
    'completion',
    'hover',
    'formatting',
  ]) {
    const reply = await server.request(`textDocument/${method}`, {
      textDocument,
      position,
      positions: [position],
      options: { tabSize: 2, insertSpaces: true },
    });
    expect(reply, method).toBeTruthy();
  }
  // What is not checked is said: the plans beyond a number, and the text beyond a length.
  const found = codes(await server.diagnostics(pasted, 2, from));
  expect(found).toEqual(expect.arrayContaining(['file-too-long', 'too-many-plans']));
});

it('answers for another file before the pasted one is checked, and forgets it once it is taken back', async () => {
  // Other plans than before: those that are the same would not be checked again.
  server.change(pasted, megabyte.replaceAll('36,000 to', '36,500 to'), 3);
  server.change(other, samplePlan(14), 2);
  const reply = await server.request<SignedAnalysis>('cribwright/analysis', { uri: other });
  expect(reply.version).toBe(2);
  const from = server.received.length;
  server.change(pasted, samplePlan(14), 4);
  expect(codes(await server.diagnostics(pasted, 4, from))).toContain('crib-height');
  expect(codes(await server.diagnostics(other, 2))).toContain('crib-height');
  const whole = await server.request<SignedAnalysis>('cribwright/analysis', { uri: pasted });
  expect(whole.version).toBe(4);
  const published = server.published(pasted);
  expect(published.map(({ version }: PublishDiagnosticsParams) => version).slice(-1)).toEqual([4]);
  expect(published.some(({ version }) => version === 3)).toBe(false);
});

import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { AnalysisChangedParams, ExpectationsReply, SignedAnalysis } from '@cribwright/server/protocol';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CodeLens } from 'vscode-languageserver-protocol';
import { DiagnosticSeverity } from 'vscode-languageserver-protocol';
import { type Client, startServer } from './client.js';
import { samplePlan } from './sample-plan.js';

let server: Client;
let life: unknown;
let last = 0;
const opened = (text: string, scheme = 'file', path = '/alder-ridge'): string => {
  const uri = `${scheme}://${path}/truthful-${++last}.crib`;
  server.open(uri, text);
  return uri;
};

beforeAll(async () => {
  server = await startServer();
  life = (await server.initialize()).life;
});
afterAll(async () => {
  expect(server.stray()).toBe('');
  expect(await server.stop()).toBe(0);
});

const announced = async (uri: string): Promise<AnalysisChangedParams> =>
  (await server.whole(uri)).params as AnalysisChangedParams;

describe('what the server says of a plan', () => {
  it('names the version of the text and the life of the server', async () => {
    expect(life).toMatch(/^[0-9a-f]{16}$/);
    const uri = opened(samplePlan(13));
    expect(await announced(uri)).toMatchObject({ version: 1, life, plans: 1 });
    server.change(uri, samplePlan(14), 2);
    const whole = await server.request<SignedAnalysis>('cribwright/analysis', { uri });
    expect(whole).toMatchObject({ version: 2, life });
    const held = await server.request<ExpectationsReply>('cribwright/expectations', { uri });
    expect(held).toMatchObject({ version: 2, life });
  });

  it('is signed by another life after it was started again', async () => {
    const other = await startServer();
    const { life: next } = await other.initialize();
    expect(next).not.toBe(life);
    expect(await other.stop()).toBe(0);
  });

  it('tells a file without a plan from one in which nothing was found', async () => {
    expect(await announced(opened(''))).toMatchObject({ plans: 0, danger: 0, notRun: 0 });
    expect(await announced(opened('cache Rescue12 {\n  40 Fir4x4 24 in long\n}\n'))).toMatchObject({
      plans: 0,
    });
  });
});

describe('an older version of a plan, shown beside the newer one', () => {
  it('adds no problems', async () => {
    // What was opened last is checked first.
    const now = opened(samplePlan(14));
    const old = opened(samplePlan(14), 'git');
    expect((await server.diagnostics(now)).length).toBeGreaterThan(0);
    await announced(now);
    expect(server.published(old)).toEqual([]);
  });
});

describe('a finding that a reviewer accepted', () => {
  const accepting = `${samplePlan(14).trimEnd().slice(0, -1)}
  accept crib-height on A because "shored to the dock" by "training captain" until 2099-01-31
}
`;
  it('is the same to the problems, the lens and the tally: accepted, and in no other count', async () => {
    const before = await announced(opened(samplePlan(14)));
    const uri = opened(accepting);
    const after = await announced(uri);
    expect(after).toMatchObject({ accepted: 1, danger: before.danger - 1, warning: before.warning });
    const found = server.published(uri).at(-1)?.diagnostics ?? [];
    const high = found.filter(({ code }) => code === 'crib-height');
    expect(high.map(({ severity }) => severity)).toEqual([DiagnosticSeverity.Information]);
    expect(high[0]?.message).toMatch(
      /^Accepted by training captain until 2099-01-31\. Reason: shored to the dock\. Crib A is 49 in tall\./,
    );
    const lenses = await server.request<CodeLens[]>('textDocument/codeLens', { textDocument: { uri } });
    expect(lenses[0]?.command?.title).toMatch(/ · 1 accepted · /);
    const reply = await server.request<SignedAnalysis>('cribwright/analysis', { uri });
    const findings = reply.plans.flatMap(({ analysis }) => analysis.findings);
    expect(findings.filter(({ accepted }) => accepted).map(({ rule }) => rule)).toEqual(['crib-height']);
  });
});

describe('a percent sign in the path of a use line', () => {
  it.each(['%.crib', '50%.crib', '%zz/a.crib', 'library/50%.crib', 'library/%E0%A4%A.crib'])(
    'fails no feature: %s',
    async (path) => {
      const uri = opened(`use "${path}"\n${samplePlan(13)}`);
      const textDocument = { uri };
      const position = { line: 0, character: 7 };
      for (const method of [
        'semanticTokens/full',
        'documentSymbol',
        'documentLink',
        'foldingRange',
        'codeLens',
      ])
        expect(await server.request(`textDocument/${method}`, { textDocument })).not.toBeNull();
      for (const method of ['hover', 'completion', 'definition'])
        await server.request(`textDocument/${method}`, { textDocument, position });
      const found = await server.diagnostics(uri);
      expect(found.map(({ code }) => code)).toContain('use-not-found');
    },
  );

  it('shows an empty page for a rule whose address is not escaped right', async () => {
    const page = { uri: 'cribwright:/rules/%E0%A4%A.md' };
    expect(await server.request('workspace/textDocumentContent', page)).toEqual({ text: '' });
  });
});

describe('a use line that leads nowhere', () => {
  const told = async (from: Client, uri: string): Promise<string[]> =>
    (await from.diagnostics(uri, 2))
      .filter(({ code }) => code === 'use-not-found')
      .map((d) => String(d.message));

  it('is answered alike by a server that has seen other files, and by a fresh one', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'alder-ridge-'));
    writeFileSync(join(folder, 'rescue-12.crib'), 'cache Rescue12 {\n  40 Fir4x4 24 in long\n}\n');
    writeFileSync(join(folder, 'rescue-1.crib'), 'cache Rescue1 {\n  40 Fir4x4 24 in long\n}\n');
    const uri = pathToFileURL(join(folder, 'plan.crib')).href;
    const edited = `use "rescue-123.crib"\n${samplePlan(13)}`;
    const before = `use "rescue-12.crib"\nuse "nowhere/rescue-123.crib"\n${samplePlan(13)}`;
    const answers: string[][] = [];
    for (const first of [before, edited]) {
      const one = await startServer();
      await one.initialize({ rootUri: pathToFileURL(folder).href });
      one.open(uri, first);
      await one.diagnostics(uri, 1);
      one.change(uri, edited, 2);
      answers.push(await told(one, uri));
      expect(await one.stop()).toBe(0);
    }
    expect(answers[0]).toEqual(['There is no file rescue-123.crib. Did you mean rescue-12.crib?']);
    expect(answers[1]).toEqual(answers[0]);
  });
});
